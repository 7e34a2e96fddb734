package org.coursewright.core.bond;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;

import org.coursewright.bond.NearestLengths;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.UnfillableReason;
import org.coursewright.bond.UnfillableRun;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.junit.jupiter.api.Test;

/** Sentences about runs that nothing fills. */
class UnfillableWordsTest {

    private static UnfillableRun run(UnfillableReason reason, Optional<Length> shorter, Optional<Length> longer) {
        return new UnfillableRun(3, Length.ofInches(10), Length.ofInchFraction(97, 4), RunEnd.FACE, RunEnd.JOINT,
                reason, new NearestLengths(shorter, longer));
    }

    private static UnfillableReason nothingAddsUp() {
        return new UnfillableReason.NothingAddsUp(Length.ofInchFraction(3, 8), Length.ofInchFraction(3, 4));
    }

    @Test
    void lengthsAreInTheProjectsDisplayUnit() {
        UnfillableRun run = run(nothingAddsUp(), Optional.of(Length.ofInches(14)),
                Optional.of(Length.ofInchFraction(115, 8)));

        assertThat(new UnfillableWords(LengthFormat.INCHES).of(run))
                .isEqualTo("No pieces with joints between 3/8\" and 3/4\" add up to 1'-2 1/4\". "
                        + "It could be filled if it were 1'-2\" or 1'-2 3/8\" long.");
        assertThat(new UnfillableWords(LengthFormat.MILLIMETRES).of(run))
                .isEqualTo("No pieces with joints between 9.5 mm and 19.1 mm add up to 362 mm. "
                        + "It could be filled if it were 355.6 mm or 365.2 mm long.");
    }

    @Test
    void tooShortNamesTheShortestPieceAndItsJoints() {
        UnfillableRun run = run(new UnfillableReason.TooShort(Length.ofInches(16), Length.ofInchFraction(3, 8)),
                Optional.empty(), Optional.empty());

        assertThat(new UnfillableWords(LengthFormat.INCHES).of(run))
                .isEqualTo("The run of 1'-2 1/4\" is too short: the shortest piece is 1'-4\" and its joints take at "
                        + "least 3/8\". Allow a wider range of joints or a shorter piece.");
    }

    /** 365.125 mm shown as 365.1 mm could not be filled; what is shown lies on the safe side. */
    @Test
    void shownLengthsAreRoundedAwayFromTheRun() {
        UnfillableRun run = run(nothingAddsUp(), Optional.of(Length.ofUnits(320L * 355 + 31)), Optional.empty());

        assertThat(new UnfillableWords(LengthFormat.MILLIMETRES).of(run)).contains("if it were 355 mm long");
    }
}
