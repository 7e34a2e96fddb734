package org.coursewright.layout.ui.editor;

import java.util.Optional;

import org.coursewright.bond.UnfillableRun;
import org.coursewright.core.bond.UnfillableWords;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.eclipse.osgi.util.NLS;

/**
 * Why a run cannot be filled.
 *
 * @param drawing of the wall
 * @param format of lengths
 */
record UnfillableHint(FaceDrawing drawing, LengthFormat format) {

    /** The reason at a place of the wall, empty if the run there is filled. */
    Optional<String> at(Length along, Length height) {
        return drawing.courseAt(height).map(course -> course.course().number()).flatMap(number -> drawing.layout()
                .unfillable().stream().filter(run -> run.course() == number && isAt(run, along)).findFirst())
                .map(run -> NLS.bind(EditorText.unfillableRun, run.course(), new UnfillableWords(format).of(run)));
    }

    private static boolean isAt(UnfillableRun run, Length along) {
        return !along.isLessThan(run.from()) && along.isLessThan(run.to());
    }
}
