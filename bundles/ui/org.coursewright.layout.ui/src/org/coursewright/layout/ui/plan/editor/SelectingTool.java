package org.coursewright.layout.ui.plan.editor;

import org.eclipse.gef.tools.PanningSelectionTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/**
 * Selects, and pans while the space bar is held. The framework's tool keeps Esc to itself even when there is nothing to
 * give up; here it is a key of the plan then.
 */
final class SelectingTool extends PanningSelectionTool {

    @Override
    protected boolean handleKeyDown(KeyEvent event) {
        if (event.character == SWT.ESC && isInState(STATE_INITIAL)) {
            return getCurrentViewer().getKeyHandler().keyPressed(event);
        }
        return super.handleKeyDown(event);
    }
}
