package org.coursewright.bond.internal;

import java.util.Optional;

import org.coursewright.measure.Length;

/** Says why nothing fills a run, and which lengths next to its own could be filled. */
final class FillableLengths {

    /** How far from the run's length to look, in whole units. */
    private static final int REACH = 3;

    private final Masonry masonry;

    FillableLengths(Masonry masonry) {
        this.masonry = masonry;
    }

    String reason(RunShape shape) {
        Optional<Long> shorter = nearest(shape, -1);
        Optional<Long> longer = nearest(shape, 1);
        return why(shape) + " " + remedy(shorter, longer);
    }

    private String why(RunShape shape) {
        long joints = (shape.startJoints() + shape.endJoints()) * masonry.least();
        long shortest = masonry.specials().stream().reduce(masonry.whole(), Math::min);
        if (masonry.canCut()) {
            shortest = Math.min(shortest, shape.rakeEnds() > 0 ? masonry.shortest() : masonry.cutLeast());
        }
        if (shape.length() < shortest + joints) {
            return "The run of %s is too short: the shortest piece is %s and its joints take at least %s.".formatted(
                    text(shape.length()), text(shortest), text(joints));
        }
        return "No pieces with joints between %s and %s add up to %s.".formatted(text(masonry.least()),
                text(masonry.most()), text(shape.length()));
    }

    private static String remedy(Optional<Long> shorter, Optional<Long> longer) {
        if (shorter.isPresent() && longer.isPresent()) {
            return "It could be filled if it were %s or %s long.".formatted(text(shorter.get()), text(longer.get()));
        }
        return shorter.or(() -> longer).map(length -> "It could be filled if it were %s long.".formatted(text(length)))
                .orElse("Allow a wider range of joints or a shorter piece.");
    }

    private static String text(long length) {
        return Length.ofUnits(length).toString();
    }

    /** The nearest length that can be filled, below or above; exact, as fillable lengths form intervals. */
    private Optional<Long> nearest(RunShape shape, int direction) {
        return new FillableIntervals(masonry, shape).nearest(direction, REACH * masonry.whole());
    }
}
