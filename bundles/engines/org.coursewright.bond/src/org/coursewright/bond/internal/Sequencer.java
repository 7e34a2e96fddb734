package org.coursewright.bond.internal;

import java.util.Optional;

/**
 * Puts a set of pieces into an order that meets few windows. All joints of the run are equal, so the joint after some
 * pieces lies where their sum says, whatever their order; the joints at the ends of the run do not depend on the order.
 */
final class Sequencer {

    private final RunShape shape;
    private final Masonry masonry;
    private final PieceSet set;
    private final Windows.Grid windows;

    Sequencer(RunShape shape, Masonry masonry, PieceSet set, Windows windows) {
        this.shape = shape;
        this.masonry = masonry;
        this.set = set;
        this.windows = windows.grid(set.joints());
    }

    /**
     * An order that meets at most so many windows; under a rake the one with the fewest cuts.
     *
     * @return empty if there is none
     */
    Optional<Pattern> sequence(int mostViolations) {
        if (shape.isRaked()) {
            return new OrderSearch(shape, masonry, set, windows).sequence(mostViolations);
        }
        int left = mostViolations - atEnds();
        if (left < 0) {
            return Optional.empty();
        }
        return left == 0
                ? new FreeOrder(shape, masonry, set, windows).find()
                : new OrderSearch(shape, masonry, set, windows).sequence(mostViolations);
    }

    /** An order whose joints between pieces meet no window; those at the ends of the run meet so many at most. */
    Optional<Pattern> clear(int mostAtEnds) {
        int atEnds = atEnds();
        if (atEnds > mostAtEnds) {
            return Optional.empty();
        }
        return shape.isRaked()
                ? new OrderSearch(shape, masonry, set, windows).sequence(atEnds)
                : new FreeOrder(shape, masonry, set, windows).find();
    }

    private int atEnds() {
        long joint = set.jointTotal();
        long length = shape.length() * set.joints();
        int start = shape.startJoints() == 1 ? windows.count(0, joint) : 0;
        int end = shape.endJoints() == 1 ? windows.count(length - joint, length) : 0;
        return start + end;
    }
}
