package org.coursewright.layout.ui.trial;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.ProfilePoint.Basis;
import org.coursewright.measure.Length;

/**
 * Cuts of a wall by the place of one of its openings, as far as they are known.
 *
 * @param planned offset of the opening as it is
 * @param points by ascending place
 * @param goesOn whether more is being found
 */
public record PlaceCuts(Length planned, List<ProfilePoint> points, boolean goesOn) {

    /** How many steps either way are looked at: 8 in, or 160 mm. */
    public static final long REACH = 32;
    /** From how many steps away a place with fewest cuts draws an opening: 3/4 in, or 15 mm. */
    public static final long ATTRACTION = 3;

    private static final Comparator<ProfilePoint> FEWEST = Comparator.comparingInt(ProfilePoint::unfillable)
            .thenComparingInt(ProfilePoint::lapViolations).thenComparingInt(ProfilePoint::cutPieces);

    public PlaceCuts {
        points = List.copyOf(points);
    }

    /** @return the points that need as few cuts, short laps and unfilled runs as any, of those of which a layout is known */
    public List<ProfilePoint> best() {
        Optional<ProfilePoint> least = laid().stream().min(FEWEST);
        return laid().stream().filter(point -> FEWEST.compare(point, least.orElse(point)) == 0).toList();
    }

    private List<ProfilePoint> laid() {
        return points.stream().filter(point -> point.basis() != Basis.BOUND).toList();
    }

    /**
     * @param offset where somebody would put the opening
     * @param within how far it may be drawn from there
     * @return the nearest of the best places, empty if none is so near
     */
    public Optional<Length> attracting(Length offset, Length within) {
        return best().stream().map(point -> planned.plus(point.change()))
                .filter(place -> !place.minus(offset).abs().isGreaterThan(within))
                .min(Comparator.comparing(place -> place.minus(offset).abs()));
    }

    /**
     * @param offset of the opening
     * @return what is known of that place
     */
    public Optional<ProfilePoint> at(Length offset) {
        return points.stream().filter(point -> planned.plus(point.change()).equals(offset)).findFirst();
    }

    /** @return the most cuts of a point, 0 if there is none */
    public int mostCuts() {
        return points.stream().mapToInt(ProfilePoint::cutPieces).max().orElse(0);
    }
}
