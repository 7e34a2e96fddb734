package org.coursewright.cli.takeoff;

import java.util.List;
import java.util.Locale;

import org.coursewright.cli.FindingText;
import org.coursewright.cli.JsonText;
import org.coursewright.core.bond.UnitCount;
import org.coursewright.core.cost.ResourceLine;
import org.coursewright.core.takeoff.CourseMortar;
import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.core.takeoff.TakeoffOutcome;
import org.coursewright.core.takeoff.UnitsTaken;
import org.coursewright.core.takeoff.WallTaken;
import org.coursewright.measure.Quantity;

/** Writes a take-off as {@code coursewright.takeoff/1}, described in docs/formats/takeoff-json.md. */
final class TakeoffJson {

    private static final String SCHEMA = "coursewright.takeoff/1";

    private final JsonText json;
    private int line;

    private TakeoffJson(JsonText json) {
        this.json = json;
    }

    static String of(String project, TakeoffOutcome outcome, List<ResourceLine> resources) {
        return JsonText.document(SCHEMA, json -> new TakeoffJson(json).write(project, outcome, resources));
    }

    private void write(String project, TakeoffOutcome outcome, List<ResourceLine> resources) {
        json.member("project", project);
        json.member("estimate", true);
        json.texts("assumptions", outcome.assumptions());
        json.array("lines", outcome.lines(), each -> json.object(() -> writeNumbered(each)));
        json.array("resources", resources, each -> json.object(() -> write(each)));
        json.array("units", outcome.units(), units -> json.object(() -> write(units)));
        json.array("walls", outcome.walls(), wall -> json.object(() -> write(wall)));
        FindingText.write(outcome.findings(), json);
    }

    private void write(ResourceLine each) {
        json.member("resource", each.resource());
        json.member("work", each.work().name().toLowerCase(Locale.ROOT));
        json.member("element", each.element());
        write(each.amount());
    }

    private void writeNumbered(TakeoffLine each) {
        json.member("line", ++line);
        write(each);
    }

    private void write(TakeoffLine each) {
        json.member("item", each.item());
        write(each.quantity());
        each.inFeet().ifPresent(feet -> json.object("feet", () -> write(feet)));
        json.member("formula", each.formula());
        json.member("expression", each.expression());
        json.member("source", each.source());
        json.array("inputs", each.inputs(), input -> json.object(() -> {
            json.member("symbol", input.symbol());
            write(input.value());
        }));
        json.texts("elements", each.elements());
    }

    private void write(Quantity quantity) {
        json.member("quantity", quantity.value());
        json.member("unit", quantity.unitCode());
    }

    private void write(UnitsTaken units) {
        json.member("unit", units.unit());
        json.member("bond", units.bond());
        write(units.pieces());
        json.member("cutUp", units.cutUp());
        json.member("proven", units.proven());
        json.member("consumed", units.consumed());
        json.member("ordered", units.ordered());
        json.member("specialsOrdered", units.specialsOrdered());
        json.member("lowPieces", units.lowPieces());
    }

    private void write(UnitCount pieces) {
        json.member("whole", pieces.whole());
        json.member("special", pieces.special());
        json.member("cut", pieces.cut());
    }

    private void write(WallTaken wall) {
        json.member("mark", wall.mark());
        json.member("unit", wall.unit());
        json.member("bond", wall.bond());
        write(wall.pieces());
        json.member("face", wall.face().quantity().value());
        json.array("courses", wall.courses(), course -> json.object(() -> write(course)));
    }

    private void write(CourseMortar course) {
        json.member("course", course.course());
        json.member("bed", course.bed().value());
        json.member("head", course.head().value());
        json.member("besideCuts", course.besideCuts().value());
        json.member("net", course.net().value());
    }
}
