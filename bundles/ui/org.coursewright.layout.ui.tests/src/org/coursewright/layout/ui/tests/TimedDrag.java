package org.coursewright.layout.ui.tests;

import java.time.Duration;
import java.util.Optional;

import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.layout.ui.strip.AdviceStrip;
import org.coursewright.layout.ui.strip.StripContent;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.eclipse.draw2d.FigureCanvas;

/**
 * An opening that is dragged with the mouse; each move is measured until the wall, laid for the place that the opening is at
 * then, has been painted.
 */
final class TimedDrag {

    /** How far a hand goes before it turns back. */
    private static final int TURN = 30;
    /** How far a hand goes from one event of the mouse to the next: now slower, now faster. */
    private static final int[] STRIDES = {1, 1, 2, 2, 3, 4, 4, 3, 2, 1};

    private final MouseOnOpening held;
    private final PaintedPlace painted;
    private int at;

    private TimedDrag(OpenFace face, Opening opening) {
        held = MouseOnOpening.inTheMiddle(face, opening);
        painted = PaintedPlace.on((FigureCanvas) face.viewer().getControl(), held::shownOffset);
    }

    /** Takes hold of an opening, drags it a little, and waits until nothing more is to be found out about its places. */
    static TimedDrag of(OpenFace face, Opening opening) {
        TimedDrag drag = new TimedDrag(face, opening);
        drag.at = 1;
        drag.held.drag(drag.at);
        OpenFace.await(() -> isLookedAt() && drag.isPainted());
        return drag;
    }

    /** Moves on, a pixel each time, as soon as the last move has been painted. */
    long[] onwards(int moves) {
        long[] taken = new long[moves];
        for (int i = 0; i < moves; i++) {
            taken[i] = moveBy(1);
        }
        return taken;
    }

    /** Moves there and back, now slower, now faster, with a pause between moves. */
    long[] asAHandDoes(int moves, Duration pause) {
        long[] taken = new long[moves];
        int turn = at + TURN;
        int direction = 1;
        for (int i = 0; i < moves; i++) {
            OpenFace.pause(pause);
            direction = at > turn ? -1 : at < turn - TURN ? 1 : direction;
            taken[i] = moveBy(direction * STRIDES[i % STRIDES.length]);
        }
        return taken;
    }

    /** Moves until the opening is at another place: near a place with few cuts it stays there for a while. */
    private long moveBy(int pixels) {
        Length before = wanted();
        long begin = System.nanoTime();
        while (wanted().equals(before)) {
            at += pixels;
            begin = System.nanoTime();
            held.move(at);
        }
        OpenFace.await(this::isPainted);
        return System.nanoTime() - begin;
    }

    private boolean isPainted() {
        return painted.is(wanted());
    }

    /** Lets go. */
    void give() {
        held.give();
    }

    /** Whether the strip under the wall has nothing more to find. */
    private static boolean isLookedAt() {
        return content().flatMap(StripContent::cuts).filter(cuts -> !cuts.goesOn()).isPresent();
    }

    /** Where the opening is dragged to, or drawn to by a place with few cuts. */
    private static Length wanted() {
        return content().flatMap(StripContent::at).map(OpeningPlace::offset).orElseThrow();
    }

    private static Optional<StripContent> content() {
        return Screen.all(AdviceStrip.class).findFirst().flatMap(AdviceStrip::content);
    }
}
