package org.coursewright.layout.ui.plan.part;

import org.coursewright.core.geometry.Place;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.Request;

/** Asks for one end of something to be moved: of a wall, or a jamb of an opening. */
public final class GripRequest extends Request {

    /** Type of these requests. */
    public static final String TYPE = "move grip";

    private final Place place;
    private Point moved = new Point();
    private boolean fine;
    private boolean alone;

    /** @param place start or end; of an opening, the near or the far jamb */
    public GripRequest(Place place) {
        super(TYPE);
        this.place = place;
    }

    /** @return start or end; of an opening, the near or the far jamb */
    public Place place() {
        return place;
    }

    /** @return how many pixels the mouse has moved */
    public Point moved() {
        return moved;
    }

    /** @return whether fine steps hold instead of the module */
    public boolean isFine() {
        return fine;
    }

    /** @return whether what meets there stays where it is */
    public boolean isAlone() {
        return alone;
    }

    /**
     * @param by how many pixels the mouse has moved
     * @param fineSteps whether fine steps hold instead of the module
     * @param byItself whether what meets there stays where it is
     */
    public void move(Point by, boolean fineSteps, boolean byItself) {
        moved = by.getCopy();
        fine = fineSteps;
        alone = byItself;
    }
}
