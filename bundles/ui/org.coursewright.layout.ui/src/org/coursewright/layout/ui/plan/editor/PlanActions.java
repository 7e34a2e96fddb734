package org.coursewright.layout.ui.plan.editor;

import java.util.List;

import org.coursewright.layout.ui.plan.action.AlignAction;
import org.coursewright.layout.ui.plan.action.CopyAction;
import org.coursewright.layout.ui.plan.action.MirrorAction;
import org.coursewright.layout.ui.plan.action.PlanSelection;
import org.coursewright.layout.ui.plan.change.Alignment;
import org.eclipse.gef.KeyStroke;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.gef.ui.actions.SelectionAction;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IWorkbenchPart;

/** The actions on what is selected in a plan, in its menu and by their keys. */
final class PlanActions {

    private static final char CTRL_D = '\u0004';

    private PlanActions() {
    }

    /** Registers them, and makes the menu, to which the registry's own actions belong too. */
    static void add(IWorkbenchPart editor, PlanSelection selected, ActionRegistry registry) {
        SelectionAction copy = new CopyAction(editor, selected);
        List<SelectionAction> actions = List.of(copy, new MirrorAction(editor, selected, true),
                new MirrorAction(editor, selected, false), new AlignAction(editor, selected, Alignment.Side.LOWER),
                new AlignAction(editor, selected, Alignment.Side.CENTRE),
                new AlignAction(editor, selected, Alignment.Side.UPPER));
        actions.forEach(registry::registerAction);
        selected.viewer().setContextMenu(new PlanMenu(selected, registry, actions));
        selected.viewer().getKeyHandler().put(KeyStroke.getPressed(CTRL_D, 'd', SWT.CTRL), copy);
    }
}
