package org.coursewright.workbench.internal.window;

import java.util.List;

import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/**
 * Registers the actions that parts fill with their own meaning. Without this the platform ignores the handlers that
 * views and graphical editors set for undo and the like, and the keys do nothing.
 */
final class WindowActions extends ActionBarAdvisor {

    private static final List<ActionFactory> RETARGETABLE = List.of(ActionFactory.UNDO, ActionFactory.REDO,
            ActionFactory.DELETE, ActionFactory.RENAME, ActionFactory.SELECT_ALL, ActionFactory.PRINT);

    WindowActions(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void makeActions(IWorkbenchWindow window) {
        RETARGETABLE.forEach(factory -> register(factory.create(window)));
    }
}
