package org.coursewright.exchange.estimate;

import java.nio.file.Path;
import java.util.List;

import org.coursewright.exchange.remark.Remarks;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.project.Project;

/** A price list for a project that there is. */
public final class RateFile {

    private final Path file;
    private final LengthFormat format;

    /**
     * @param file a table of rates, not null
     * @param format what a bare length means, not null
     */
    public RateFile(Path file, LengthFormat format) {
        this.file = file;
        this.format = format;
    }

    /**
     * Reads the rates; the project is not changed.
     *
     * @param project whose currency they must be in, and whose uncertainties they may move with
     * @param remarks where everything that is wrong is noted
     * @return the rates whose rows are sound, in no project
     */
    public List<Rate> read(Project project, Remarks remarks) {
        return new RateTable(new Book(project, true), EstimateFolder.currency(project)).read(file, format, remarks)
                .sound().stream().map(Made::element).toList();
    }
}
