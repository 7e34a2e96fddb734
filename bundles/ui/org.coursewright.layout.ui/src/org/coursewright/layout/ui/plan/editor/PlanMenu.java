package org.coursewright.layout.ui.plan.editor;

import java.util.List;

import org.coursewright.layout.ui.plan.action.PlanSelection;
import org.eclipse.gef.ContextMenuProvider;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.gef.ui.actions.SelectionAction;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.ui.actions.ActionFactory;

/** What can be done with what is selected in a plan. */
final class PlanMenu extends ContextMenuProvider {

    private final ActionRegistry registry;
    private final List<SelectionAction> actions;
    private final PlanSelection selected;

    PlanMenu(PlanSelection selected, ActionRegistry registry, List<SelectionAction> actions) {
        super(selected.viewer());
        this.selected = selected;
        this.registry = registry;
        this.actions = List.copyOf(actions);
    }

    @Override
    public void buildContextMenu(IMenuManager menu) {
        menu.add(registry.getAction(ActionFactory.UNDO.getId()));
        menu.add(registry.getAction(ActionFactory.REDO.getId()));
        menu.add(new Separator());
        actions.forEach(action -> {
            action.update(); // the menu keeps its items, and shows them as they are told to be
            menu.add(action);
        });
        menu.add(new Separator());
        selected.handing().ifPresent(corners -> corners.addTo(menu));
        menu.add(new Separator());
        menu.add(registry.getAction(ActionFactory.DELETE.getId()));
        menu.add(new Separator());
        menu.add(registry.getAction(ActionFactory.PRINT.getId()));
    }
}
