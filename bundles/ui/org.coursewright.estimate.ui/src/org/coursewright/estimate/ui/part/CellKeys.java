package org.coursewright.estimate.ui.part;

import org.eclipse.jface.viewers.ColumnViewerEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationStrategy;
import org.eclipse.jface.viewers.FocusCellOwnerDrawHighlighter;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerEditor;
import org.eclipse.jface.viewers.TableViewerFocusCellManager;
import org.eclipse.swt.SWT;

/** Lets cells be reached with the arrow keys and typed over after F2 or Enter, beside a click. */
final class CellKeys {

    private CellKeys() {
    }

    static void enable(TableViewer viewer) {
        TableViewerFocusCellManager focus = new TableViewerFocusCellManager(viewer,
                new FocusCellOwnerDrawHighlighter(viewer,
                        false));
        TableViewerEditor.create(viewer, focus, new ColumnViewerEditorActivationStrategy(viewer) {
            @Override
            protected boolean isEditorActivationEvent(ColumnViewerEditorActivationEvent event) {
                boolean key = event.eventType == ColumnViewerEditorActivationEvent.KEY_PRESSED
                        && (event.keyCode == SWT.F2
                                || event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR);
                return key || super.isEditorActivationEvent(event);
            }
        }, ColumnViewerEditor.KEYBOARD_ACTIVATION);
    }
}
