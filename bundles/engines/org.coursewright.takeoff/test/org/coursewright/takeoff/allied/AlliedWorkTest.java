package org.coursewright.takeoff.allied;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

import org.coursewright.measure.Length;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.TraceInput;
import org.junit.jupiter.api.Test;

class AlliedWorkTest {

    private static final Bar NUMBER_FOUR = Bar.inchSizes().get(1);

    /** 6.1 m bars that lap by 0.6 m cover 10 m with two and 11.7 m with three; 11.6 m just with two. */
    @Test
    void barsLapAndTheLapIsSteelToo() {
        assertThat(run(10_000).bars()).isEqualTo(2);
        assertThat(run(10_000).steel()).isEqualTo(mm(10_600));
        assertThat(run(11_600).bars()).isEqualTo(2);
        assertThat(run(11_601).bars()).isEqualTo(3);
        assertThat(run(500).bars()).isEqualTo(1);
        assertThat(run(500).steel()).isEqualTo(mm(500));
    }

    /** 10 × 0.25 × 0.2 m and 10 % waste; two sides of 10 × 0.2 m; two lines of two bars; 2 × 10.6 m at 0.994 kg/m. */
    @Test
    void bondBeamTakesConcreteFormworkAndSteel() {
        List<Figure> figures = new BondBeam("BB1", mm(10_000), mm(250), mm(200), run(10_000), 2, Fraction.of("0.1"))
                .figures();
        assertThat(figures).extracting(figure -> figure.quantity().toString()).containsExactly("0.55 MTQ", "4 MTK",
                "4 H87", "21.0728 KGM");
        assertThat(figures.get(0).trace().elements()).containsExactly("BB1");
    }

    /** Nominal masses by ASTM A615, from memory, against eighths of an inch of steel of 7850 kg/m³. */
    @Test
    void massesOfBarsFollowFromTheirDiameters() {
        for (int number = 3; number <= 8; number++) {
            double diameter = number * 0.0254 / 8;
            double mass = Math.PI / 4 * diameter * diameter * 7850;
            assertThat(Bar.inchSizes().get(number - 3).massPerMetre().toDecimal().doubleValue()).isCloseTo(mass, within(
                    0.005 * mass));
        }
    }

    @Test
    void lintelIsRoundedUpToItsStep() {
        assertThat(new Lintel("D1", mm(900), mm(200), mm(100)).length()).isEqualTo(mm(1300));
        assertThat(new Lintel("D1", mm(910), mm(200), mm(100)).figure().quantity()).hasToString("1.4 MTR");
    }

    @Test
    void tiesAreLaidEverySoManyCourses() {
        assertThat(new Ties("J1", 14, 4, 2).figure().quantity()).hasToString("6 H87");
        assertThat(new Ties("J1", 3, 4, 2).figure().quantity()).hasToString("0 H87");
    }

    /** 30 m² in two coats at 8 m² a litre are 7.5 L; with a tenth more 8.25 L. */
    @Test
    void sealerFollowsFromCoverageAndCoats() {
        Figure litres = new Coating("sealer", Fraction.of(8), 2, Fraction.of("0.1")).figure("GB1", Fraction.of(30));
        assertThat(litres.quantity()).hasToString("8.25 LTR");
        assertThat(litres.trace().inputs()).extracting(TraceInput::symbol).containsExactly("area", "coats", "coverage",
                "waste");
    }

    /**
     * 5 × 3 m less a window of 1.2 × 1.0 m and a door of 0.9 × 2.1 m; reveals of 0.15 m on the window all round (4.4 m) and on
     * the door without its sill (5.1 m): 15 − 1.2 − 1.89 + 0.66 + 0.765 m².
     */
    @Test
    void plasterIsLessOpeningsAndMoreReveals() {
        PlasterFace face = new PlasterFace("W1/left", mm(5000), mm(3000), List.of(new PlasterFace.Opening(mm(1200), mm(
                1000), mm(150), true), new PlasterFace.Opening(mm(900), mm(2100), mm(150), false)));
        assertThat(face.area()).isEqualTo(Fraction.of("13.335"));
        List<Figure> figures = face.figures(mm(20), Fraction.of("0.25"));
        assertThat(figures.get(0).quantity()).hasToString("13.335 MTK");
        assertThat(figures.get(1).quantity()).hasToString("0.333375 MTQ");
    }

    /** 4.2 m with a reach of 1.5 m leave 2.7 m: two lifts of 1.5 m along 6 m. */
    @Test
    void scaffoldStartsAboveReach() {
        Scaffold high = new Scaffold("W1", mm(6000), mm(4200), mm(1500), mm(1500));
        assertThat(high.figures()).extracting(figure -> figure.quantity().toString()).containsExactly("2 C62",
                "18 MTK");
        assertThat(new Scaffold("W2", mm(6000), mm(1500), mm(1500), mm(1500)).lifts()).isZero();
    }

    @Test
    void contradictionsAreRefusedByName() {
        assertThatThrownBy(() -> new PlasterFace("W7", mm(1000), mm(1000), List.of(new PlasterFace.Opening(mm(1100), mm(
                1000), mm(0), false)))).hasMessageContaining("W7").hasMessageContaining("1.1 m²");
        assertThatThrownBy(() -> new BarRun(NUMBER_FOUR, mm(1000), mm(600), mm(600))).hasMessageContaining("600 mm");
        assertThatThrownBy(() -> new Ties("J1", 3, 0, 2)).hasMessageContaining("J1");
        assertThatThrownBy(() -> new Coating("sealer", Fraction.ZERO, 1, Fraction.ZERO)).hasMessageContaining("sealer");
        assertThatThrownBy(() -> new Lintel("D1", mm(0), mm(1), mm(1))).hasMessageContaining("D1");
        assertThatThrownBy(() -> new Scaffold("W1", mm(1), mm(1), mm(1), mm(0))).hasMessageContaining("W1");
        assertThatThrownBy(() -> new BondBeam("B1", mm(1), mm(0), mm(1), run(1), 1, Fraction.ZERO))
                .hasMessageContaining("B1");
    }

    private static BarRun run(long millimetres) {
        return new BarRun(NUMBER_FOUR, mm(millimetres), mm(6100), mm(600));
    }

    private static Length mm(long millimetres) {
        return Length.ofMillimetres(millimetres);
    }
}
