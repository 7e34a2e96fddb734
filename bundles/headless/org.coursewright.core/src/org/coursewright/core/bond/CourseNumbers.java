package org.coursewright.core.bond;

import java.util.List;
import java.util.StringJoiner;

/** Writes course numbers in short: {@code 1–9}, {@code 1–21 odd}, {@code 2, 5, 9}. */
public final class CourseNumbers {

    private static final int LEAST_TO_SHORTEN = 3;

    private CourseNumbers() {
    }

    /**
     * Writes numbers in short.
     *
     * @param rising the numbers, each greater than the one before, not null
     * @return the numbers in short
     */
    public static String of(List<Integer> rising) {
        StringJoiner text = new StringJoiner(", ");
        int at = 0;
        while (at < rising.size()) {
            int step = at + 1 < rising.size() ? rising.get(at + 1) - rising.get(at) : 0;
            int end = lastOf(rising, at, step);
            boolean shortened = (step == 1 || step == 2) && end - at + 1 >= LEAST_TO_SHORTEN;
            text.add(shortened ? range(rising.get(at), rising.get(end), step) : String.valueOf(rising.get(at)));
            at = shortened ? end + 1 : at + 1;
        }
        return text.toString();
    }

    private static int lastOf(List<Integer> rising, int at, int step) {
        int end = at;
        while (end + 1 < rising.size() && rising.get(end + 1) - rising.get(end) == step) {
            end++;
        }
        return end;
    }

    private static String range(int first, int last, int step) {
        String range = first + "–" + last;
        return step == 1 ? range : range + (first % 2 == 0 ? " even" : " odd");
    }
}
