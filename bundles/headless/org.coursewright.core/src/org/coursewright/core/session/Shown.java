package org.coursewright.core.session;

/** Text from a file as it may be shown in a message: on one line and not too long. */
final class Shown {

    private static final int LONGEST = 60;

    private Shown() {
    }

    static String of(String text) {
        String oneLine = text.replaceAll("\\p{Cntrl}", "\u2423");
        return oneLine.length() <= LONGEST ? oneLine : oneLine.substring(0, LONGEST) + "\u2026";
    }
}
