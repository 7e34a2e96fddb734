package org.coursewright.core.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.core.PlanBuilder.in;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.CutCause;
import org.coursewright.bond.CutReason;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.NearestLengths;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.RunBound;
import org.coursewright.measure.LengthFormat;
import org.junit.jupiter.api.Test;

/** Sentences about cuts. */
class CutWordsTest {

    private static final NearestLengths NEAREST = new NearestLengths(Optional.of(in("25")), Optional.of(in("27 1/2")));
    private static final Meeting CORNER = new Meeting("C", Meeting.Kind.CORNER, List.of("W1", "W2"), Optional.empty());

    private static RunBound opening(String mark) {
        return new RunBound.Interrupted(new Obstacle(Obstacle.Kind.OPENING, mark, in("0"), in("10"), 1, 1,
                Optional.empty()));
    }

    private static CutReason reason(int course, RunBound start, RunBound end, CutCause... causes) {
        return new CutReason(course, in("10"), in("37 1/4"), start, end, List.of(causes));
    }

    private static String words(CutReason reason) {
        return new CutWords(LengthFormat.INCHES, "W1", List.of(CORNER)).of(reason, reason.causes().get(0));
    }

    @Test
    void pierIsNamedWithItsLengthAndWhatWouldSpareTheCut() {
        assertThat(words(reason(3, opening("D1"), opening("N2"), new CutCause.RunLength(1, NEAREST))))
                .isEqualTo("The pier between opening D1 and opening N2 is 2'-3 1/4\" long and needs 1 cut by itself. "
                        + "At 2'-1\" or 2'-3 1/2\" it would need none.");
    }

    @Test
    void turnNamesTheWallMet() {
        assertThat(words(reason(3, new RunBound.Corner("C", true), opening("N2"), new CutCause.Turn(1, "C", NEAREST))))
                .isEqualTo("The run between the outer face of the corner with W2 and opening N2 is 2'-3 1/4\" long. "
                        + "If the turns at the meeting with W2 were the other way round, it would need 1 cut fewer. "
                        + "At 2'-1\" or 2'-3 1/2\" it would need none.");
    }

    @Test
    void lapNamesTheCourseThatAsksForIt() {
        assertThat(words(reason(3, new RunBound.Free(), new RunBound.Tied(),
                new CutCause.Lap(2, CutCause.Neighbours.BELOW, true))))
                .isEqualTo("The run between the free end and the wall it is tied to could be filled with fewer cuts, "
                        + "but not so that its joints lap those of the course below.");
    }

    @Test
    void endsThatAreAlikeAreNamedOnce() {
        assertThat(words(reason(3, new RunBound.Tied(), new RunBound.Tied(), new CutCause.Pinned(1))))
                .isEqualTo(
                        "The run with the wall it is tied to at both ends could be filled with fewer cuts, but not as it "
                                + "is pinned.");
    }

    @Test
    void cutsThatReadAlikeAreGroupedByCourse() {
        CutCause.RunLength length = new CutCause.RunLength(1, NEAREST);
        CutCause.Rake rake = new CutCause.Rake(2);
        List<CutGroup> groups = CutGroup.of(
                List.of(reason(3, opening("D1"), opening("N2"), length),
                        reason(5, opening("D1"), opening("N2"), length),
                        reason(9, new RunBound.Raked(), new RunBound.Raked(), rake)),
                new CutWords(LengthFormat.INCHES, "W1", List.of()));

        assertThat(groups).extracting(CutGroup::cuts).containsExactly(2, 2);
        assertThat(groups).extracting(CutGroup::courses).containsExactly(List.of(3, 5), List.of(9));
        assertThat(groups.get(1).why()).isEqualTo("The pieces lie under the slope of the gable.");
    }
}
