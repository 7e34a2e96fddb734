package org.coursewright.layout.ui.handing;

import org.eclipse.osgi.util.NLS;

/** What is said about the handing of corners. */
final class HandingText extends NLS {

    public static String atEnd;
    public static String atStart;
    public static String leave;
    public static String oddCourses;
    public static String oddCoursesPinned;
    public static String runsThrough;

    static {
        NLS.initializeMessages(HandingText.class.getPackageName() + ".messages", HandingText.class);
    }

    private HandingText() {
    }
}
