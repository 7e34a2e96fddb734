package org.coursewright.exchange.sheet.layout;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.measure.Length;

/** A stretch along a wall. */
record Stretch(Length from, Length to) {

    /** @return what is left of {@code whole} between stretches that begin one after the other and may overlap */
    static List<Stretch> gaps(List<Stretch> taken, Stretch whole) {
        List<Stretch> gaps = new ArrayList<>();
        Length reached = whole.from();
        for (Stretch stretch : taken) {
            if (stretch.from().isGreaterThan(reached)) {
                gaps.add(new Stretch(reached, stretch.from()));
            }
            reached = stretch.to().isGreaterThan(reached) ? stretch.to() : reached;
        }
        if (whole.to().isGreaterThan(reached)) {
            gaps.add(new Stretch(reached, whole.to()));
        }
        return gaps;
    }
}
