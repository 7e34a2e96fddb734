package org.coursewright.layout.ui.editor;

import org.eclipse.osgi.util.NLS;

/** What the wall-face editor says. */
final class EditorText extends NLS {

    public static String accessibleFace;
    public static String anyPiece;
    public static String clearMarks;
    public static String counts;
    public static String cut;
    public static String deleted;
    public static String export;
    public static String exportTitle;
    public static String failed;
    public static String firstAnswer;
    public static String fit;
    public static String gauges;
    public static String gaugesHint;
    public static String improved;
    public static String laying;
    public static String layUpTo;
    public static String leftOut;
    public static String bearing;
    public static String marked;
    public static String markedCourse;
    public static String noCourses;
    public static String other;
    public static String notAJoint;
    public static String piece;
    public static String pieceJoint;
    public static String pieceWhy;
    public static String pinJoint;
    public static String pinJointAsk;
    public static String pinJointTitle;
    public static String pinPiece;
    public static String pinned;
    public static String unfold;
    public static String unfoldHint;
    public static String unpin;
    public static String proven;
    public static String shortLap;
    public static String shortLapAt;
    public static String special;
    public static String unfillable;
    public static String unfillableRun;
    public static String whole;

    static {
        NLS.initializeMessages(EditorText.class.getPackageName() + ".messages", EditorText.class);
    }

    private EditorText() {
    }
}
