package org.coursewright.layout.ui.trial;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.ProfilePoint.Basis;
import org.coursewright.layout.ui.part.OpeningGrip;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.measure.Length;

/**
 * Cuts of a wall by the place of one of its openings or of one of its jambs, as far as they are known.
 *
 * @param grip what of the opening would be moved
 * @param planned where the opening is
 * @param points by ascending place; each change is how far the grip would be moved
 * @param goesOn whether more is being found
 */
public record PlaceCuts(OpeningGrip grip, OpeningPlace planned, List<ProfilePoint> points, boolean goesOn) {

    /** How many steps either way are looked at: 8 in, or 160 mm. */
    public static final long REACH = 32;
    /** From how many steps away a place with fewest cuts draws what is dragged: 3/4 in, or 15 mm. */
    public static final long ATTRACTION = 3;

    private static final Comparator<ProfilePoint> FEWEST = Comparator.comparingInt(ProfilePoint::unfillable)
            .thenComparingInt(ProfilePoint::lapViolations).thenComparingInt(ProfilePoint::cutPieces);

    public PlaceCuts {
        points = List.copyOf(points);
    }

    /** @return the points that need as few cuts, short laps and unfilled runs as any, of those of which a layout is known */
    public List<ProfilePoint> best() {
        Optional<ProfilePoint> least = known().stream().min(FEWEST);
        return known().stream().filter(point -> FEWEST.compare(point, least.orElse(point)) == 0).toList();
    }

    private List<ProfilePoint> known() {
        return points.stream().filter(point -> point.basis() != Basis.BOUND).toList();
    }

    /**
     * @param point of these
     * @return where the opening would be
     */
    public OpeningPlace place(ProfilePoint point) {
        return grip.moved(planned, point.change());
    }

    /**
     * @param wanted where somebody would put the opening
     * @param within how far the grip may be drawn from there
     * @return the nearest of the best places, empty if none is so near
     */
    public Optional<OpeningPlace> attracting(OpeningPlace wanted, Length within) {
        return best().stream().map(this::place)
                .filter(place -> !grip.between(wanted, place).abs().isGreaterThan(within))
                .min(Comparator.comparing(place -> grip.between(wanted, place).abs()));
    }

    /**
     * @param place of the opening
     * @return what is known of that place
     */
    public Optional<ProfilePoint> at(OpeningPlace place) {
        return points.stream().filter(point -> place(point).equals(place)).findFirst();
    }

    /**
     * @param laid how the wall was laid at leisure, by the place that the opening was at
     * @return the same, what is known of that place as laid so if that takes less
     */
    public PlaceCuts improvedBy(Map<OpeningPlace, WallLayout> laid) {
        return new PlaceCuts(grip, planned, points.stream().map(point -> Optional.ofNullable(laid.get(place(point)))
                .map(layout -> laid(point.change(), layout))
                .filter(better -> point.basis() == Basis.BOUND || FEWEST.compare(better, point) < 0).orElse(point))
                .toList(), goesOn);
    }

    /** What a layout comes to. */
    static ProfilePoint laid(Length change, WallLayout layout) {
        return new ProfilePoint(change, layout.unfillable().size(), layout.lapViolations(), layout.cutPieces(), 0,
                Basis.LAID);
    }

    /** @return the most cuts of a point, 0 if there is none */
    public int mostCuts() {
        return points.stream().mapToInt(ProfilePoint::cutPieces).max().orElse(0);
    }
}
