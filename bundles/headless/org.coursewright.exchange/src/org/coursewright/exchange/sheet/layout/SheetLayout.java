package org.coursewright.exchange.sheet.layout;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.coursewright.exchange.sheet.Sheet;
import org.coursewright.exchange.sheet.SheetSettings;
import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.page.SheetPage;
import org.coursewright.exchange.sheet.page.TextMeasure;

/** Arranges the sheet of one wall. */
public final class SheetLayout {

    private final TextMeasure measure;

    /** @param measure tells how wide texts are, not null */
    public SheetLayout(TextMeasure measure) {
        this.measure = Objects.requireNonNull(measure, "measure");
    }

    /**
     * Arranges a sheet. The same wall and settings give the same sheet.
     *
     * @param wall the wall, not null
     * @param settings how it is made, not null
     * @return its pages
     */
    public Sheet arrange(SheetWall wall, SheetSettings settings) {
        SheetFormat format = new SheetFormat(wall.format().unit());
        Paper paper = Paper.of(format);
        FirstPage first = new FirstPage(wall, settings, format, paper, measure);
        int scale = Scales.first(settings.scale(), format.unit(), first::fits);
        List<Drawing> drawings = tables(wall, format, paper, first.draw(scale));
        List<SheetPage> pages = IntStream.range(0, drawings.size()).mapToObj(
                i -> paper.page(drawings.get(i), wall, i + 1, drawings.size())).toList();
        return new Sheet(wall.mark(), scale, pages);
    }

    private List<Drawing> tables(SheetWall wall, SheetFormat format, Paper paper, FirstPage.Drawn drawn) {
        TableFlow flow = new TableFlow(measure, drawn.drawing(), drawn.free(), paper.wholeTables());
        PieceTables pieces = new PieceTables(wall, format);
        Stream<Table> always = Stream.of(NotFilled.of(wall, format, measure), pieces.pieceList(), pieces.cutList(),
                new JointGauge(format, measure).of(wall));
        Stream<Table> marks = Stream.of(drawn.lacksPole()
                ? Stream.of(LineMarks.poleTable(wall, format))
                : Stream.<Table>empty(),
                drawn.lacksLine()
                        ? Stream.of(LineMarks.lineTable(wall, format))
                        : Stream
                                .<Table>empty())
                .flatMap(tables -> tables);
        Stream.concat(always, marks).filter(table -> !table.rows().isEmpty()).forEach(flow::add);
        return flow.drawings();
    }
}
