package org.coursewright.exchange.estimate;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.exchange.remark.Shown;
import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.LengthRange;
import org.coursewright.exchange.table.NumberCell;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.HeightBand;
import org.coursewright.model.estimate.LearningTheory;
import org.coursewright.model.estimate.Task;
import org.coursewright.model.estimate.WorkKind;

/** Who does what how fast. */
final class WorkTable extends Schedule<Made<Task>> {

    private static final int MOST_REPETITIONS = 100_000;

    private final Book book;

    WorkTable(Book book) {
        super(Stream.concat(Stream.of(Column.mandatory("work"), Column.optional("crew"), Column.optional("plant"),
                Column.optional("output"), Column.optional("conditions"), Column.optional("learning"), Column.optional(
                        "theory"),
                Column.optional("repetition"), Column.optional("plateau"),
                Column.optional(
                        "heights"),
                Column.optional("source")), RangeCells.COLUMNS.stream()).toList());
        this.book = book;
    }

    @Override
    protected String markColumn() {
        return "work";
    }

    @Override
    protected Made<Task> row(Cells cells) {
        Task task = EstimateFactory.eINSTANCE.createTask();
        task.setMark(cells.mark("work"));
        cells.word("work", WorkKind.values(), WorkKind::getLiteral).ifPresent(task::setKind);
        book.crews().named(cells, "crew").ifPresent(task::setCrew);
        book.plant().named(cells, "plant").ifPresent(task::setPlant);
        NumberCell.quantity(cells, "output").ifPresent(task::setOutput);
        NumberCell.positive(cells, "conditions").ifPresent(task::setConditionsShare);
        NumberCell.share(cells, "learning").ifPresent(task::setLearningShare);
        cells.word("theory", LearningTheory.values(), LearningTheory::getLiteral).ifPresent(task::setLearningTheory);
        NumberCell.positive(cells, "repetition").ifPresent(task::setLearningRepetition);
        NumberCell.whole(cells, "plateau", 1, MOST_REPETITIONS).ifPresent(task::setLearningPlateau);
        if (!cells.text("source").isEmpty()) {
            task.setSource(cells.text("source"));
        }
        Parts.split(cells.text("heights")).forEach(part -> band(cells, part).ifPresent(task.getBands()::add));
        RangeCells.read(cells, task, book);
        return new Made<>(cells.line(), task.getMark(), task);
    }

    /** Such as {@code 60 in 0.9}: from 60 in up, nine tenths of the output. */
    private static Optional<HeightBand> band(Cells cells, String part) {
        int blank = part.lastIndexOf(' ');
        Optional<BigDecimal> output = NumberCell.parsed(part.substring(blank + 1)).filter(each -> each.signum() > 0);
        if (blank < 0 || output.isEmpty()) {
            cells.wrong("heights", "%s cannot be used: enter a height and a part of the output, such as 1.5 m 0.9."
                    .formatted(Shown.quoted(part)));
            return Optional.empty();
        }
        HeightBand band = EstimateFactory.eINSTANCE.createHeightBand();
        band.setFrom(cells.parsed("heights", part.substring(0, blank), LengthRange.RISE));
        band.setOutputShare(output.get());
        return Optional.of(band);
    }
}
