package org.coursewright.diagram.ui.editor;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.ui.parts.GraphicalViewerKeyHandler;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/** Keys of every diagram: plus and minus zoom, with or without Ctrl; Home shows everything. */
public class DiagramKeys extends GraphicalViewerKeyHandler {

    private final GraphicalViewer viewer;
    private final Runnable fit;

    /**
     * @param viewer that has the keys
     * @param fit shows everything
     */
    public DiagramKeys(GraphicalViewer viewer, Runnable fit) {
        super(viewer);
        this.viewer = viewer;
        this.fit = fit;
    }

    @Override
    public boolean keyPressed(KeyEvent event) {
        switch (event.keyCode) {
            case SWT.HOME -> fit.run();
            case '+', '=', SWT.KEYPAD_ADD -> DiagramScale.zoom(viewer).zoomIn();
            case '-', SWT.KEYPAD_SUBTRACT -> DiagramScale.zoom(viewer).zoomOut();
            default -> {
                return super.keyPressed(event);
            }
        }
        return true;
    }
}
