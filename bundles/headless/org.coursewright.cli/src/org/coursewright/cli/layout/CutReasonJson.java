package org.coursewright.cli.layout;

import java.util.Locale;

import org.coursewright.bond.CutCause;
import org.coursewright.bond.CutReason;
import org.coursewright.bond.NearestLengths;
import org.coursewright.bond.RunBound;
import org.coursewright.cli.JsonText;
import org.coursewright.core.bond.CutWords;

/** Writes why pieces of a run are cut. */
final class CutReasonJson {

    private final JsonText json;
    private final CutWords words;

    CutReasonJson(JsonText json, CutWords words) {
        this.json = json;
        this.words = words;
    }

    void write(CutReason reason) {
        json.member("course", reason.course());
        json.member("from", reason.from());
        json.member("to", reason.to());
        json.object("startsAt", () -> write(reason.start()));
        json.object("endsAt", () -> write(reason.end()));
        json.array("causes", reason.causes(), cause -> json.object(() -> write(reason, cause)));
    }

    private void write(RunBound bound) {
        if (bound instanceof RunBound.Corner corner) {
            writeMeeting("corner", corner.meeting(), corner.through());
        } else if (bound instanceof RunBound.Bonded bonded) {
            writeMeeting("bonded", bonded.meeting(), bonded.through());
        } else if (bound instanceof RunBound.Interrupted interrupted) {
            json.member("kind", interrupted.obstacle().kind().name().toLowerCase(Locale.ROOT));
            json.member("mark", interrupted.obstacle().mark());
        } else {
            json.member("kind", bound instanceof RunBound.Raked
                    ? "rake"
                    : bound instanceof RunBound.Tied
                            ? "tied"
                            : "free");
        }
    }

    private void writeMeeting(String kind, String meeting, boolean through) {
        json.member("kind", kind);
        json.member("meeting", meeting);
        json.member("through", through);
    }

    private void write(CutReason reason, CutCause cause) {
        if (cause instanceof CutCause.Rake) {
            json.member("cause", "rake");
        } else if (cause instanceof CutCause.RunLength length) {
            json.member("cause", "run-length");
            write(length.sparing());
        } else if (cause instanceof CutCause.Turn turn) {
            json.member("cause", "turn");
            json.member("meeting", turn.meeting());
            write(turn.sparing());
        } else if (cause instanceof CutCause.Lap lap) {
            json.member("cause", "lap");
            json.member("askedBy", lap.askedBy().name().toLowerCase(Locale.ROOT));
            json.member("proven", lap.proven());
        } else if (cause instanceof CutCause.Pinned) {
            json.member("cause", "pinned");
        }
        json.member("cuts", cause.cuts());
        json.member("why", words.of(reason, cause));
    }

    private void write(NearestLengths sparing) {
        sparing.shorter().ifPresent(length -> json.member("shorter", length));
        sparing.longer().ifPresent(length -> json.member("longer", length));
    }
}
