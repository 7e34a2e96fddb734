package org.coursewright.exchange.sheet.layout;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.UnfillableRun;
import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.layout.Table.Column;
import org.coursewright.exchange.sheet.page.TextMeasure;

/** Runs that no pieces and joints fill, and why. */
final class NotFilled {

    private static final double REASON_WIDTH = 80;

    private NotFilled() {
    }

    static Table of(SheetWall wall, SheetFormat format, TextMeasure measure) {
        List<List<String>> rows = new ArrayList<>();
        for (UnfillableRun run : wall.layout().unfillable()) {
            List<String> reason = Wrap.lines(run.reason(), REASON_WIDTH, TableFlow.SIZE, measure);
            rows.add(List.of(String.valueOf(run.course()), format.length(run.from()), format.length(run.to()), reason
                    .get(0)));
            reason.stream().skip(1).forEach(line -> rows.add(List.of("", "", "", line)));
        }
        return new Table("Runs not filled: settle these before laying", List.of(),
                List.of(Column.right("course"), Column.right("from"), Column.right("to"), Column.left("why")), rows);
    }
}
