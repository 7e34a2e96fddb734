package org.coursewright.core.bond;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.bond.UnfillableReason.NothingAddsUp;
import org.coursewright.bond.UnfillableReason.PinNotKept;
import org.coursewright.bond.UnfillableReason.TooShort;
import org.coursewright.bond.UnfillableRun;
import org.coursewright.measure.LengthFormat;

/**
 * Says why nothing fills a run, and what would.
 *
 * @param format of lengths
 */
public record UnfillableWords(LengthFormat format) {

    public UnfillableWords {
        Objects.requireNonNull(format, "format");
    }

    /**
     * @param run that nothing fills
     * @return one or two sentences
     */
    public String of(UnfillableRun run) {
        return why(run) + " " + remedy(run);
    }

    private String why(UnfillableRun run) {
        String length = format.format(run.length());
        if (run.reason() instanceof TooShort tooShort) {
            String joints = tooShort.joints().signum() == 0
                    ? ""
                    : " and its joints take at least " + format.format(tooShort.joints());
            return "The run of %s is too short: the shortest piece is %s%s.".formatted(length,
                    format.format(tooShort.shortestPiece()), joints);
        }
        if (run.reason() instanceof PinNotKept) {
            return "The run of %s could be filled, but not as it is pinned.".formatted(length);
        }
        NothingAddsUp nothing = (NothingAddsUp) run.reason();
        return "No pieces with joints between %s and %s add up to %s.".formatted(format.format(nothing.least()),
                format.format(nothing.most()), length);
    }

    private String remedy(UnfillableRun run) {
        Optional<String> lengths = new NearestWords(format).of(run.nearest());
        if (run.reason() instanceof PinNotKept) {
            return "Change the pin or take it out.";
        }
        return lengths.map("It could be filled if it were %s long."::formatted)
                .orElse("Allow a wider range of joints or a shorter piece.");
    }
}
