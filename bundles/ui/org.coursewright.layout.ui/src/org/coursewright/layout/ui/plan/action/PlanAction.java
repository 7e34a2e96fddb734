package org.coursewright.layout.ui.plan.action;

import org.eclipse.gef.ui.actions.SelectionAction;
import org.eclipse.ui.IWorkbenchPart;

/** An action on what is selected in a plan. */
abstract class PlanAction extends SelectionAction {

    private final PlanSelection selected;

    PlanAction(IWorkbenchPart editor, PlanSelection selected, String id, String text) {
        super(editor);
        this.selected = selected;
        setId(id);
        setText(text);
        setLazyEnablementCalculation(true);
    }

    final PlanSelection selected() {
        return selected;
    }
}
