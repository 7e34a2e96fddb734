package org.coursewright.exchange.estimate;

import java.util.Arrays;
import java.util.List;

import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.LengthRange;
import org.coursewright.exchange.table.NumberCell;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.GradeBeam;
import org.coursewright.model.building.Reinforcement;

/** Grade beams under walls. */
final class BeamTable extends Schedule<Made<GradeBeam>> {

    private final Book book;

    BeamTable(Book book) {
        super(List.of(Column.mandatory("mark"), Column.mandatory("walls"), Column.mandatory("width"), Column.mandatory(
                "depth"), Column.optional("mix"), Column.optional("bar"), Column.optional("lines"),
                Column.optional(
                        "stock"),
                Column.optional("lap")));
        this.book = book;
    }

    @Override
    protected Made<GradeBeam> row(Cells cells) {
        GradeBeam beam = BuildingFactory.eINSTANCE.createGradeBeam();
        beam.setMark(cells.mark("mark"));
        words(cells.text("walls")).forEach(mark -> book.walls().find(cells, "walls", mark).ifPresent(beam
                .getWalls()::add));
        beam.setWidth(cells.length("width", LengthRange.WIDTH));
        beam.setDepth(cells.length("depth", LengthRange.WIDTH));
        book.mixes().named(cells, "mix").ifPresent(beam::setMix);
        if (!cells.text("bar").isEmpty()) {
            beam.setReinforcement(steel(cells));
        }
        return new Made<>(cells.line(), beam.getMark(), beam);
    }

    /** @return marks that blanks separate */
    static List<String> words(String text) {
        return Arrays.stream(text.split("\\s+")).filter(word -> !word.isEmpty()).limit(1000).toList();
    }

    private static Reinforcement steel(Cells cells) {
        Reinforcement steel = BuildingFactory.eINSTANCE.createReinforcement();
        steel.setBar(cells.mark("bar"));
        NumberCell.whole(cells, "lines", 1, 100).ifPresent(steel::setLines);
        cells.optionalLength("stock", LengthRange.WIDTH).ifPresent(steel::setStock);
        cells.optionalLength("lap", LengthRange.WIDTH).ifPresent(steel::setLap);
        return steel;
    }
}
