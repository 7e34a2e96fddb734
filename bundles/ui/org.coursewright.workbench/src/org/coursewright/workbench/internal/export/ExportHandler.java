package org.coursewright.workbench.internal.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.WorkbenchIds;
import org.coursewright.workbench.notice.Notices;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Writes what the command's parameter says about the active project, to a place that somebody is asked for. */
public final class ExportHandler extends AbstractHandler {

    private static final String COPIES = "coursewright-export";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        ExportKind kind = ExportKind.named(event.getParameter(WorkbenchIds.EXPORT_KIND));
        Shell shell = HandlerUtil.getActiveShellChecked(event);
        OpenProjects projects = PlatformUI.getWorkbench().getService(OpenProjects.class);
        Optional<ProjectSession> session = projects.active();
        if (session.isPresent()) {
            Optional<Path> target = Optional.ofNullable(event.getParameter(WorkbenchIds.EXPORT_TARGET)).map(Path::of)
                    .or(() -> choose(kind, session.get(), shell));
            target.ifPresent(place -> start(new Export(session.get(), kind, place)));
        }
        return null;
    }

    @Override
    public void setEnabled(Object evaluationContext) {
        setBaseEnabled(PlatformUI.getWorkbench().getService(OpenProjects.class).active().isPresent());
    }

    private static Optional<Path> choose(ExportKind kind, ProjectSession session, Shell shell) {
        String folder = session.file().toAbsolutePath().getParent().toString();
        if (kind.makesFolder()) {
            DirectoryDialog dialog = new DirectoryDialog(shell);
            dialog.setText(kind.label());
            dialog.setFilterPath(folder);
            return Optional.ofNullable(dialog.open()).map(Path::of);
        }
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(kind.label());
        dialog.setFilterPath(folder);
        dialog.setFileName(baseName(session) + "-" + kind.command() + ".json");
        dialog.setOverwrite(true);
        return Optional.ofNullable(dialog.open()).map(Path::of);
    }

    private static String baseName(ProjectSession session) {
        return session.file().getFileName().toString().replace(ProjectStore.EXTENSION, "");
    }

    private static void start(Export export) {
        try {
            Path copy = Files.createTempDirectory(COPIES).resolve(export.file().getFileName());
            export.saveProject(copy);
            new ExportJob(export, copy,
                    result -> PlatformUI.getWorkbench().getDisplay().asyncExec(() -> tell(export, result)))
                    .schedule();
        } catch (IOException | ProjectFileException e) {
            tell(export, new ExportResult(false, e.getMessage()));
        }
    }

    private static void tell(Export export, ExportResult result) {
        if (export.isOpenIn(PlatformUI.getWorkbench().getService(OpenProjects.class))) {
            PlatformUI.getWorkbench().getService(Notices.class).tell(export.notice(result));
        }
    }
}
