package org.coursewright.workbench.internal.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;

import org.coursewright.cli.CommandLineEntry;
import org.coursewright.cli.Console;
import org.coursewright.cli.ExitStatus;
import org.coursewright.measure.Progress;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;

/** Runs a headless command in the background on a copy of the project, so that what is edited meanwhile is left out. */
final class ExportJob extends Job {

    private final Export export;
    private final Path copy;
    private final Consumer<ExportResult> done;

    /**
     * @param export what to write
     * @param copy of the project, in a folder of its own that is deleted afterwards
     * @param done hears how it went, in any thread
     */
    ExportJob(Export export, Path copy, Consumer<ExportResult> done) {
        super(NLS.bind(ExportText.job, export.kind().label(), export.target().getFileName()));
        this.export = export;
        this.copy = copy;
        this.done = done;
        setUser(true);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            done.accept(write(new MonitoredProgress(monitor, getName())));
        } catch (IOException e) {
            done.accept(new ExportResult(false, NLS.bind(ExportText.cannotWrite, export.target(), e.getMessage())));
        } finally {
            monitor.done();
        }
        return Status.OK_STATUS;
    }

    private ExportResult write(Progress progress) throws IOException {
        ByteArrayOutputStream result = new ByteArrayOutputStream();
        ByteArrayOutputStream messages = new ByteArrayOutputStream();
        try (PrintStream out = utf8(result); PrintStream err = utf8(messages)) {
            int status = CommandLineEntry.run(export.kind().arguments(copy, export.target()),
                    new Console(out, err, progress));
            if (status == ExitStatus.CANCELLED.code()) {
                return new ExportResult(false, NLS.bind(ExportText.cancelled, export.kind().label()));
            }
            if (status > ExitStatus.FINDINGS.code()) {
                return new ExportResult(false, messages.toString(StandardCharsets.UTF_8).strip());
            }
        } finally {
            Files.delete(copy);
            Files.delete(copy.getParent());
        }
        if (!export.kind().makesFolder()) {
            Files.write(export.target(), result.toByteArray());
        }
        return new ExportResult(true, NLS.bind(ExportText.written, export.kind().label(), export.target()));
    }

    private static PrintStream utf8(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, false, StandardCharsets.UTF_8);
    }
}
