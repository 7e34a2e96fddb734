package org.coursewright.workbench.internal.window;

import java.util.List;

import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ActionFactory.IWorkbenchAction;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/**
 * Registers the actions that parts fill with their own meaning. Without this the platform ignores the handlers that
 * views and graphical editors set for undo and the like, and the keys do nothing. The other menus are in plugin.xml.
 */
final class WindowActions extends ActionBarAdvisor {

    private static final List<ActionFactory> HISTORY = List.of(ActionFactory.UNDO, ActionFactory.REDO);
    private static final List<ActionFactory> ELEMENTS = List.of(ActionFactory.RENAME, ActionFactory.DELETE,
            ActionFactory.SELECT_ALL);

    private static final String OFF = "-off";

    WindowActions(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void makeActions(IWorkbenchWindow window) {
        HISTORY.forEach(factory -> register(withIcons(factory.create(window))));
        ELEMENTS.forEach(factory -> register(factory.create(window)));
        register(ActionFactory.PREFERENCES.create(window));
    }

    /** Those of the platform look available on dark ground when they are not. */
    private static IWorkbenchAction withIcons(IWorkbenchAction action) {
        action.setImageDescriptor(icon(action.getId()));
        action.setDisabledImageDescriptor(icon(action.getId() + OFF));
        return action;
    }

    private static ImageDescriptor icon(String name) {
        return ResourceLocator.imageDescriptorFromBundle(WorkbenchIds.BUNDLE, "icons/" + name + ".png").orElseThrow();
    }

    @Override
    protected void fillMenuBar(IMenuManager menuBar) {
        MenuManager edit = new MenuManager(WindowText.menuEdit, IWorkbenchActionConstants.M_EDIT);
        HISTORY.forEach(factory -> edit.add(getAction(factory.getId())));
        edit.add(new Separator());
        ELEMENTS.forEach(factory -> edit.add(getAction(factory.getId())));
        edit.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        menuBar.add(edit);
    }
}
