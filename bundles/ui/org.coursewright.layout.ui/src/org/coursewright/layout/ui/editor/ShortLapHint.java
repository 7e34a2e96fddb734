package org.coursewright.layout.ui.editor;

import java.util.Optional;

import org.coursewright.bond.ShortLap;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.LengthRatio;
import org.eclipse.osgi.util.NLS;

/**
 * What a mark of a short lap stands for.
 *
 * @param drawing of the wall
 * @param format of lengths
 */
record ShortLapHint(FaceDrawing drawing, LengthFormat format) {

    /** How near the mouse must be to a mark. */
    private static final Length NEAR = Length.ofInches(2);

    /** The lap that is there and the least, empty if no mark is near. */
    Optional<String> at(Length along, Length height) {
        return drawing.layout().shortLaps().stream().filter(lap -> isNear(lap, along, height)).findFirst()
                .map(lap -> NLS.bind(EditorText.shortLapAt, new Object[]{lap.lower(), lap.upper(),
                        format.format(shown(lap.lap())), format.format(lap.least())}));
    }

    private boolean isNear(ShortLap lap, Length along, Length height) {
        return !lap.at().minus(along).abs().isGreaterThan(NEAR) && drawing.course(lap.lower())
                .map(course -> !course.top().minus(height).abs().isGreaterThan(NEAR)).orElse(false);
    }

    /** To the nearest 1/320 mm; joints that overlap lap nothing. */
    private static Length shown(LengthRatio lap) {
        return Length.ofUnits(Math.max(0,
                Math.floorDiv(2 * lap.total().units() + lap.count(), 2L * lap.count())));
    }
}
