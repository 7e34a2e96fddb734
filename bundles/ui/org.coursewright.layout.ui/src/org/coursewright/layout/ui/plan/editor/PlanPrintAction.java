package org.coursewright.layout.ui.plan.editor;

import java.util.Optional;
import java.util.function.Supplier;

import org.coursewright.diagram.ui.picture.Picture;
import org.coursewright.diagram.ui.picture.PicturePrint;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.actions.ActionFactory;

/** Prints the plan on one page. */
final class PlanPrintAction extends Action {

    private final IEditorPart editor;
    private final Supplier<? extends Optional<? extends Picture>> picture;

    PlanPrintAction(IEditorPart editor, Supplier<? extends Optional<? extends Picture>> picture) {
        super(PlanText.print);
        this.editor = editor;
        this.picture = picture;
        setId(ActionFactory.PRINT.getId());
    }

    @Override
    public void run() {
        Shell shell = editor.getSite().getShell();
        picture.get().ifPresent(shown -> {
            PrinterData chosen = new PrintDialog(shell).open();
            if (chosen != null && !new PicturePrint(shown).print(new Printer(chosen), editor.getTitle())) {
                MessageDialog.openError(shell, editor.getTitle(), PlanText.cannotPrint);
            }
        });
    }
}
