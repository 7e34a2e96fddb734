package org.coursewright.estimate.ui.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import org.coursewright.core.derive.DerivationException;
import org.coursewright.core.derive.Derived;
import org.coursewright.exchange.report.Report;
import org.coursewright.exchange.report.ReportForm;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;

/** Works out a report in the background and writes it. Cancelled, it leaves no file, and an older one as it was. */
final class ReportJob extends Job {

    private final ReportKind kind;
    private final ProjectCopy project;
    private final Path target;
    private final ReportForm form;
    private final Consumer<Outcome> done;

    /**
     * How it went.
     *
     * @param written whether there is a file now
     * @param message where, or why not
     */
    record Outcome(boolean written, String message) {
    }

    /**
     * @param kind of the report
     * @param project that it is about
     * @param target file to be written
     * @param form of the file
     * @param done told how it went, in any thread; not if it was cancelled
     */
    ReportJob(ReportKind kind, ProjectCopy project, Path target, ReportForm form, Consumer<Outcome> done) {
        super(NLS.bind(ExportText.job, kind.title(), target.getFileName()));
        this.kind = kind;
        this.project = project;
        this.target = target;
        this.form = form;
        this.done = done;
        setUser(true);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        monitor.beginTask(getName(), MonitorProgress.ALL);
        try {
            write(monitor);
            return Status.OK_STATUS;
        } catch (CancellationException e) {
            throw (OperationCanceledException) new OperationCanceledException().initCause(e);
        } catch (IOException | DerivationException e) {
            done.accept(new Outcome(false, e.getMessage()));
            return Status.OK_STATUS;
        } finally {
            monitor.done();
        }
    }

    private void write(IProgressMonitor monitor) throws IOException {
        monitor.subTask(ExportText.working);
        MonitorProgress progress = new MonitorProgress(monitor);
        Report report = kind.report(project.project().getName(), new ResultSource() {
            @Override
            public <T> T of(Derived<T> wanted) {
                return project.result(wanted, progress);
            }
        });
        progress.checkCancelled();
        monitor.subTask(ExportText.writing);
        form.write(report, target);
        done.accept(new Outcome(true, NLS.bind(ExportText.written, kind.title(), target)));
    }
}
