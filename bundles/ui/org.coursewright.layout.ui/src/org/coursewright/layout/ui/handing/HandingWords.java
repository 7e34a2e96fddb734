package org.coursewright.layout.ui.handing;

import org.coursewright.core.bond.WallHanding;
import org.eclipse.osgi.util.NLS;

/** What is said about a corner. */
public final class HandingWords {

    private HandingWords() {
    }

    /**
     * @param handing of a corner
     * @return which wall runs through there in odd courses, and whether somebody has decided so
     */
    public static String of(WallHanding handing) {
        return NLS.bind(handing.isPinned() ? HandingText.oddCoursesPinned : HandingText.oddCourses,
                handing.throughOnOdd());
    }
}
