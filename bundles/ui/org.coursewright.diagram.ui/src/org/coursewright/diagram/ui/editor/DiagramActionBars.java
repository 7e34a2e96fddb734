package org.coursewright.diagram.ui.editor;

import java.util.List;

import org.eclipse.gef.ui.actions.ActionBarContributor;
import org.eclipse.ui.actions.ActionFactory;

/** Connects the menu's undo, redo, delete and select all with the diagram that is active. */
public final class DiagramActionBars extends ActionBarContributor {

    private static final List<ActionFactory> SHARED = List.of(ActionFactory.UNDO, ActionFactory.REDO,
            ActionFactory.DELETE, ActionFactory.SELECT_ALL);

    @Override
    protected void buildActions() {
        // the window has them already
    }

    @Override
    protected void declareGlobalActionKeys() {
        SHARED.forEach(action -> addGlobalActionKey(action.getId()));
    }
}
