package org.coursewright.cli.layout;

import java.util.List;
import java.util.Locale;

import org.coursewright.bond.BondResult;
import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.JointRule;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.ShortLap;
import org.coursewright.bond.UnfillableRun;
import org.coursewright.cli.FindingText;
import org.coursewright.cli.JsonText;
import org.coursewright.cli.layout.LayResult.LaidWall;
import org.coursewright.core.bond.CutWords;
import org.coursewright.core.bond.UnfillableWords;
import org.coursewright.core.bond.UnitCount;
import org.coursewright.measure.LengthFormat;

/** Writes a layout as {@code coursewright.lay/1}, described in docs/formats/lay-json.md. */
final class LayJson {

    private static final String SCHEMA = "coursewright.lay/1";

    private final JsonText json;
    private final LengthFormat format;

    private LayJson(JsonText json, LengthFormat format) {
        this.json = json;
        this.format = format;
    }

    /** @param format of lengths in sentences */
    static String of(LayResult result, LengthFormat format) {
        return JsonText.document(SCHEMA, json -> new LayJson(json, format).write(result));
    }

    private void write(LayResult result) {
        json.member("project", result.project());
        json.member("unit", "mm");
        json.object("totals", () -> write(result.totals()));
        json.object("handing", () -> write(result.building(), result.meetings()));
        json.array("walls", result.walls(), wall -> json.object(() -> write(wall, result.meetings())));
        FindingText.write(result.findings(), json);
    }

    private void write(BondResult building, List<Meeting> meetings) {
        json.member("optimal", building.handingOptimal());
        json.member("lowerBound", building.lowerBound());
        json.array("meetings", meetings, meeting -> json.object(() -> {
            json.member("meeting", meeting.id());
            json.texts("walls", meeting.walls());
            json.member("throughOnOdd", building.throughOnOdd().get(meeting.id()));
        }));
    }

    private void write(UnitCount count) {
        json.member("whole", count.whole());
        json.member("special", count.special());
        json.member("cut", count.cut());
    }

    private void write(LaidWall wall, List<Meeting> meetings) {
        json.member("mark", wall.face().mark());
        json.member("length", wall.face().length());
        write(wall.count());
        json.member("cutPieces", wall.layout().cutPieces());
        json.member("lapViolations", wall.layout().lapViolations());
        json.member("straightJoints", wall.layout().straightJoints());
        json.member("optimal", wall.layout().optimal());
        json.member("lowerBound", wall.layout().lowerBound());
        json.object("rule", () -> write(wall.face().rule()));
        json.array("shortLaps", wall.layout().shortLaps(), lap -> json.object(() -> write(lap)));
        json.array("unfillable", wall.layout().unfillable(), run -> json.object(() -> write(run)));
        CutReasonJson reasons = new CutReasonJson(json, new CutWords(format, wall.face().mark(), meetings));
        json.array("cutReasons", wall.cutReasons(), reason -> json.object(() -> reasons.write(reason)));
        json.array("courses", wall.layout().courses(), course -> json.object(() -> write(course)));
    }

    private void write(JointRule rule) {
        json.member("leastLap", rule.leastLap());
        json.member("leastJoint", rule.least());
        json.member("nominalJoint", rule.nominal());
        json.member("mostJoint", rule.most());
    }

    private void write(UnfillableRun run) {
        json.member("course", run.course());
        json.member("from", run.from());
        json.member("to", run.to());
        writeEnds(run.startsWith(), run.endsWith());
        json.member("reason", new UnfillableWords(format).of(run));
        run.nearest().shorter().ifPresent(length -> json.member("shorter", length));
        run.nearest().longer().ifPresent(length -> json.member("longer", length));
    }

    private void write(ShortLap lap) {
        json.member("lower", lap.lower());
        json.member("upper", lap.upper());
        json.member("at", lap.at());
        json.member("lap", lap.lap().toMillimetres());
        json.member("least", lap.least());
    }

    private void write(CourseLayout course) {
        json.member("course", course.course().number());
        json.member("bottom", course.course().bottom());
        json.member("height", course.course().height());
        json.array("runs", course.runs(), run -> json.object(() -> write(run)));
    }

    private void write(Run run) {
        json.member("from", run.from());
        json.member("to", run.to());
        writeEnds(run.startsWith(), run.endsWith());
        run.joint().ifPresent(joint -> json.member("joint", joint.toMillimetres()));
        json.member("jointCount", run.jointCount());
        json.lengths("pieces", run.pieces().stream().map(Piece::length).toList());
        json.words("kinds", run.pieces().stream().map(piece -> piece.kind().name().toLowerCase(Locale.ROOT)).toList());
    }

    /** A raked end is a face too: no joint belongs to it. */
    private void writeEnds(RunEnd start, RunEnd end) {
        json.member("startsWith", start == RunEnd.JOINT ? "joint" : "face");
        json.member("endsWith", end == RunEnd.JOINT ? "joint" : "face");
        if (start == RunEnd.RAKE) {
            json.member("startRaked", true);
        }
        if (end == RunEnd.RAKE) {
            json.member("endRaked", true);
        }
    }
}
