package org.coursewright.takeoff.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.coursewright.measure.Length;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.labour.LearningCurve.Theory;
import org.junit.jupiter.api.Test;

class LabourTaskTest {

    private static final Crew CREW = new Crew("masons", List.of(new Crew.Member("mason", Fraction.of(2)),
            new Crew.Member("tender", Fraction.of(3))));
    private static final Productivity LAYING = Productivity.perDay("lay block", UnitCode.PIECE, Fraction.of(240),
            Fraction.of(8), "common practice, no source");
    private static final HeightFactors HEIGHTS = new HeightFactors(List.of(new HeightFactors.Band(mm(0), Fraction.of(
            "0.8")), new HeightFactors.Band(mm(300), Fraction.ONE), new HeightFactors.Band(mm(1500),
                    Fraction.of(
                            "0.9"))));

    /** O110, NAVFAC P-405: 448 square feet at 160 man-hours for 1000 take 71.68. */
    @Test
    void manHoursOfThePublishedWallAgree() {
        Productivity published = new Productivity("lay 8 × 8 × 16", UnitCode.SQUARE_FOOT, Fraction.of(160, 1000),
                "NAVFAC P-405");
        LabourTask task = new LabourTask(published, new Crew("one", List.of(new Crew.Member("any", Fraction.ONE))),
                List.of(new WorkPortion("W1", mm(0), Fraction.of(448))), HeightFactors.NONE, Fraction.ONE, Optional
                        .empty());
        assertThat(task.crewHours()).isEqualTo(Fraction.of("71.68"));
    }

    /** O111: the same rate is 56.25 units in a man-day of 8 hours, at 1125 units for 1000 square feet. */
    @Test
    void outputOfAManDayAgreesWithThePublishedRate() {
        Productivity published = new Productivity("lay 8 × 8 × 16", UnitCode.PIECE, Fraction.of(160, 1125),
                "NAVFAC P-405");
        assertThat(published.outputIn(Fraction.of(8))).isEqualTo(Fraction.of("56.25"));
    }

    /** O112, trade table of 1995: 131 plain units a day, scored ones at 0.95 of that, printed as 125 a day. */
    @Test
    void conditionsMultiplyOutput() {
        Productivity plain = Productivity.perDay("lay 8 in", UnitCode.PIECE, Fraction.of(131), Fraction.of(8),
                "trade table, 1995");
        LabourTask scored = new LabourTask(plain, CREW, List.of(new WorkPortion("W1", mm(0), Fraction.of(1000))),
                HeightFactors.NONE, Fraction.of("0.95"), Optional.empty());

        Fraction aDay = Fraction.of(1000).dividedBy(scored.crewHours()).times(8);

        assertThat(aDay).isEqualTo(Fraction.of("124.45"));
        assertThat(aDay.toDecimal().doubleValue()).isCloseTo(125, within(0.6));
    }

    /** By hand, at 30 units an hour: 24 ÷ 0.8, 60 and 27 ÷ 0.9 units at plain height, together 120 or four hours. */
    @Test
    void heightChangesOutputBandByBand() {
        LabourTask task = task(HEIGHTS, Optional.empty(), portion("W1/1", 0, 24), portion("W1/4", 300, 60), portion(
                "W1/16", 1600, 27));
        assertThat(task.crewHours()).isEqualTo(Fraction.of(4));
        assertThat(task.crewHours(task.work().get(0))).isEqualTo(Fraction.ONE);
        List<Figure> figures = task.figures();
        assertThat(figures).extracting(Figure::item).containsExactly("masons", "mason", "tender");
        assertThat(figures).extracting(figure -> figure.quantity().toString()).containsExactly("4 HUR", "8 HUR",
                "12 HUR");
        assertThat(figures.get(0).trace().elements()).containsExactly("W1/1", "W1/4", "W1/16");
    }

    /** Two repetitions of 120 units at 80 %: 4 hours and 3.2. */
    @Test
    void learningShortensRepetitions() {
        LearningCurve curve = new LearningCurve(Fraction.of("0.8"), Theory.UNIT, Fraction.of(120), 100);
        LabourTask task = task(HeightFactors.NONE, Optional.of(curve), portion("W1", 0, 240));
        assertThat(task.crewHours().toDecimal().doubleValue()).isCloseTo(7.2, within(1e-8));
    }

    @Test
    void hoursOfPortionsAddUpToTheTask() {
        Random random = new Random(8);
        LearningCurve curve = new LearningCurve(Fraction.of("0.85"), Theory.CUMULATIVE_AVERAGE, Fraction.of(50), 20);
        for (int i = 0; i < 100; i++) {
            List<WorkPortion> work = new ArrayList<>();
            for (int n = 0; n < 1 + random.nextInt(20); n++) {
                work.add(portion("W" + n, random.nextInt(3000), random.nextInt(100)));
            }
            LabourTask task = task(HEIGHTS, Optional.of(curve), work.toArray(WorkPortion[]::new));
            assertThat(work.stream().map(task::crewHours).reduce(Fraction.ZERO, Fraction::plus)).isEqualTo(task
                    .crewHours());
        }
    }

    /** 3000 blocks at 250 an hour, a fifth of the hours lost: 15 hours. */
    @Test
    void plantLosesAShareOfItsHours() {
        PlantTask press = new PlantTask("press", UnitCode.PIECE, Fraction.of(3000), Fraction.of(250), Fraction.of(
                "0.2"));
        assertThat(press.figure().quantity()).hasToString("15 HUR");
        assertThat(press.figure().trace().inputs()).hasSize(3);
    }

    @Test
    void heightBandsOutOfOrderAreRefused() {
        assertThatThrownBy(() -> new HeightFactors(List.of(new HeightFactors.Band(mm(1500), Fraction.ONE),
                new HeightFactors.Band(mm(300), Fraction.ONE)))).hasMessageContaining("300 mm").hasMessageContaining(
                        "1500 mm");
    }

    @Test
    void plantThatLosesAllItsHoursIsRefused() {
        assertThatThrownBy(() -> new PlantTask("press", UnitCode.PIECE, Fraction.ONE, Fraction.ONE, Fraction.ONE))
                .hasMessageContaining("press");
    }

    @Test
    void tradeNamedTwiceInACrewIsRefused() {
        assertThatThrownBy(() -> new Crew("masons", List.of(CREW.members().get(0), CREW.members().get(0))))
                .hasMessageContaining("masons");
    }

    private static LabourTask task(HeightFactors heights, Optional<LearningCurve> learning, WorkPortion... work) {
        return new LabourTask(LAYING, CREW, List.of(work), heights, Fraction.ONE, learning);
    }

    private static WorkPortion portion(String element, long height, long quantity) {
        return new WorkPortion(element, mm(height), Fraction.of(quantity));
    }

    private static Length mm(long millimetres) {
        return Length.ofMillimetres(millimetres);
    }
}
