package org.coursewright.layout.ui.strip;

import java.util.Comparator;
import java.util.List;

import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.ProfilePoint.Basis;
import org.coursewright.layout.ui.part.OpeningGrip;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.layout.ui.trial.PlaceCuts;
import org.coursewright.measure.Length;
import org.eclipse.osgi.util.NLS;

/**
 * What is to be read in the strip: numbers of cuts beside the dimension that they belong to.
 *
 * @param content of the strip
 */
record StripWords(StripContent content) {

    /** What the strip shows, what the opening needs where it is, and the fewest that any place needs that was laid. */
    String title() {
        if (content.opening().isEmpty()) {
            return StripText.selectOpening;
        }
        String opening = content.opening().get();
        return content.cuts().map(cuts -> NLS.bind(title(cuts.grip()), opening) + found(cuts))
                .orElse(opening + StripText.looking);
    }

    private static String title(OpeningGrip grip) {
        return switch (grip) {
            case OPENING -> StripText.title;
            case NEAR_JAMB -> StripText.titleNearJamb;
            case FAR_JAMB -> StripText.titleFarJamb;
        };
    }

    private String found(PlaceCuts cuts) {
        String here = content.at().flatMap(cuts::at).map(point -> here(cuts, point)).orElse("");
        return here + fewest(cuts) + StripText.legend + (cuts.goesOn() ? StripText.goesOn : "");
    }

    private String here(PlaceCuts cuts, ProfilePoint point) {
        String value = value(cuts, cuts.place(point));
        if (point.unfillable() > 0) {
            return NLS.bind(StripText.hereUnfillable, value, point.unfillable());
        }
        if (point.lapViolations() > 0) {
            return NLS.bind(StripText.hereShort, new Object[]{value, point.cutPieces(), point.lapViolations()});
        }
        return NLS.bind(point.basis() == Basis.BOUND ? StripText.hereAtLeast : StripText.here, value,
                point.cutPieces());
    }

    /** The nearest of the places with the fewest cuts. */
    private String fewest(PlaceCuts cuts) {
        List<ProfilePoint> best = cuts.best();
        OpeningPlace at = content.at().orElse(cuts.planned());
        return best.stream().min(Comparator.comparing(point -> cuts.grip().between(at, cuts.place(point)).abs()))
                .map(point -> NLS.bind(StripText.fewest, point.cutPieces(), value(cuts, cuts.place(point)))).orElse("");
    }

    /** A place's dimension: how far along the wall, or how wide. */
    String value(PlaceCuts cuts, OpeningPlace place) {
        Length dimension = cuts.grip().dimension(place);
        return content.format().format(dimension);
    }

    /** What is to be read with the mouse over a column. */
    String hint(PlaceCuts cuts, ProfilePoint point) {
        String place = NLS.bind(cuts.grip() == OpeningGrip.OPENING ? StripText.fromStart : StripText.wide,
                value(cuts, cuts.place(point)));
        return NLS.bind(point.basis() == Basis.BOUND ? StripText.atLeastThere : StripText.laidThere, new Object[]{place,
                point.cutPieces(), point.lapViolations(), point.unfillable()});
    }
}
