package org.coursewright.layout.ui.part;

import java.util.List;

import org.coursewright.model.building.Opening;

/** What an editor does while an opening is dragged. */
public interface FaceDragging {

    /**
     * Where an opening wants to go.
     *
     * @param opening that is dragged
     * @param grip what of it is held
     * @param place where the mouse takes it
     * @return the same, or a place near by that needs few cuts
     */
    OpeningPlace attracted(Opening opening, OpeningGrip grip, OpeningPlace place);

    /**
     * An opening is shown at another place; nothing is edited yet.
     *
     * @param opening that is dragged
     * @param grip what of it is held
     * @param place where it would be
     * @param next where it may be next, likeliest first
     */
    void dragged(Opening opening, OpeningGrip grip, OpeningPlace place, List<OpeningPlace> next);

    /**
     * An opening is about to be changed by a step.
     *
     * @param opening that is changed
     * @param grip what of it
     */
    void held(Opening opening, OpeningGrip grip);

    /** The opening was let go, or the drag given up. */
    void ended();
}
