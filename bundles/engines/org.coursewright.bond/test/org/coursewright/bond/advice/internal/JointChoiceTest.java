package org.coursewright.bond.advice.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.Change;
import org.coursewright.bond.advice.Dimension;
import org.coursewright.bond.internal.building.LayingCost;
import org.coursewright.bond.internal.building.Layings;
import org.coursewright.bond.internal.refit.HandedBuilding;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** A wall of ten units and nine joints, halves in every other course; as planned it is half an inch too long for that. */
class JointChoiceTest {

    private static final Terms TERMS = new Terms(in("1/4"), in("2"), List.of(), 1);
    private static final LayingCost NO_CUTS = LayingCost.NONE;

    private final HandedBuilding planned = HandedBuilding.of(building("145"), new Layings(), Progress.NONE);

    private static BondRequest building(String length) {
        return wall(length).stocked(stock("14", "6 3/4")).ruled(rule("3 1/2", "1/2", "1/2", "1/2")).courses(4).alone();
    }

    private WallLayout laid(WallFace face) {
        return planned.with(List.of(face), Progress.NONE).result().walls().get(0);
    }

    private static WallOption changed(String by, String length) {
        Adjustable adjustable = Adjustable.within("W", Optional.empty(), Dimension.LENGTH, in("2"));
        Length change = in(by);
        return new WallOption(List.of(new Change(adjustable, change)), building(length).walls().get(0), NO_CUTS, false);
    }

    private JointChoice choice(WallOption... others) {
        List<WallOption> options = new ArrayList<>();
        options.add(WallOption.planned(planned.request().walls().get(0), planned.result().walls().get(0)));
        options.addAll(List.of(others));
        return new JointChoice(planned, List.of(options), TERMS);
    }

    @Test
    void optionThatComesToWhatItIsKnownToComeToIsKept() {
        WallOption shorter = changed("-1/2", "144 1/2");
        JointChoice choice = choice(shorter);

        assertThat(choice.isCorrected(List.of(laid(shorter.face())), Progress.NONE)).isFalse();
        assertThat(choice.walls()).containsExactly(shorter);
        assertThat(choice.cost()).isEqualTo(NO_CUTS);
        assertThat(choice.movement()).isEqualTo(in("1/2"));
    }

    @Test
    void optionThatComesToMoreGivesWayToTheNextBest() {
        WallOption wrong = changed("1/4", "145 1/4");
        WallOption shorter = changed("-1/2", "144 1/2");
        JointChoice choice = choice(wrong, shorter);
        assertThat(choice.walls()).containsExactly(wrong);

        assertThat(choice.isCorrected(List.of(laid(wrong.face())), Progress.NONE)).isTrue();
        assertThat(choice.cost()).isEqualTo(NO_CUTS);
        assertThat(choice.walls().get(0).changes()).isEqualTo(shorter.changes());
    }

    @Test
    void wallStaysAsPlannedWhereNoOptionComesToLess() {
        WallOption wrong = changed("1/4", "145");
        JointChoice choice = choice(wrong);

        assertThat(choice.isCorrected(List.of(laid(wrong.face())), Progress.NONE)).isTrue();
        assertThat(choice.walls().get(0).changes()).isEmpty();
        assertThat(choice.cost()).isEqualTo(LayingCost.of(planned.result().walls().get(0)));
    }
}
