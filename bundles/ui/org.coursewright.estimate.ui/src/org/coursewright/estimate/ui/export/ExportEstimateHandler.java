package org.coursewright.estimate.ui.export;

import java.nio.file.Path;
import java.util.Optional;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.exchange.report.ReportForm;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.notice.Notice;
import org.coursewright.workbench.notice.Notice.Weight;
import org.coursewright.workbench.notice.Notices;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Writes a part of the active project's estimate to a file that somebody is asked for; its ending says in which form. */
public final class ExportEstimateHandler extends AbstractHandler {

    private static final String COMMAND = "org.coursewright.estimate.ui.export";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        ReportKind kind = ReportKind.of(event.getParameter(COMMAND + ".part"));
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        PlatformUI.getWorkbench().getService(OpenProjects.class).active().ifPresent(session -> Optional.ofNullable(event
                .getParameter(COMMAND + ".target")).or(() -> ask(kind, session, shell)).ifPresent(target -> start(kind,
                        session, Path.of(target))));
        return null;
    }

    @Override
    public void setEnabled(Object evaluationContext) {
        setBaseEnabled(PlatformUI.getWorkbench().getService(OpenProjects.class).active().isPresent());
    }

    private static Optional<String> ask(ReportKind kind, ProjectSession session, Shell shell) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(kind.title());
        dialog.setFilterExtensions(new String[]{"*.xlsx", "*.csv", "*.pdf"});
        dialog.setFilterNames(new String[]{ExportText.xlsxFiles, ExportText.csvFiles, ExportText.pdfFiles});
        dialog.setFilterPath(session.file().toAbsolutePath().getParent().toString());
        dialog.setFileName(
                session.file().getFileName().toString().replace(ProjectStore.EXTENSION, "") + "-" + kind.key()
                        + ".xlsx");
        dialog.setOverwrite(true);
        return Optional.ofNullable(dialog.open());
    }

    private static void start(ReportKind kind, ProjectSession session, Path target) {
        ReportForm.of(target)
                .ifPresentOrElse(form -> new ReportJob(kind, ProjectCopy.of(session.project()), target, form,
                        outcome -> PlatformUI.getWorkbench().getDisplay().asyncExec(() -> tell(session, outcome)))
                        .schedule(),
                        () -> tell(session, new ReportJob.Outcome(false, NLS.bind(ExportText.unknownForm, target))));
    }

    private static void tell(ProjectSession session, ReportJob.Outcome outcome) {
        if (PlatformUI.getWorkbench().getService(OpenProjects.class).sessions().contains(session)) {
            PlatformUI.getWorkbench().getService(Notices.class).tell(new Notice(session, outcome.written()
                    ? Weight.NOTE
                    : Weight.ERROR, outcome.message(), false));
        }
    }
}
