package org.coursewright.diagram.ui.editor;

import java.util.List;

import org.eclipse.gef.ui.actions.ActionBarContributor;
import org.eclipse.ui.actions.ActionFactory;

/** Connects the menu's undo, redo, delete, select all and print with the diagram that is active. */
public final class DiagramActionBars extends ActionBarContributor {

    private static final List<ActionFactory> SHARED = List.of(ActionFactory.UNDO, ActionFactory.REDO,
            ActionFactory.DELETE, ActionFactory.SELECT_ALL, ActionFactory.PRINT);

    @Override
    protected void buildActions() {
        // the window has them already
    }

    @Override
    protected void declareGlobalActionKeys() {
        SHARED.forEach(action -> addGlobalActionKey(action.getId()));
    }
}
