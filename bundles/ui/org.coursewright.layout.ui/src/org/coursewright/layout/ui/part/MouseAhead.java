package org.coursewright.layout.ui.part;

import java.util.stream.IntStream;

/** Where a mouse that drags something may be next, from how it has moved. */
final class MouseAhead {

    /** How far is looked either way, as a place may take several pixels. */
    private static final int REACH = 24;

    private int at;
    private int stride;

    /**
     * Takes note of where the mouse is.
     *
     * @param pixels from where it was pressed, less than zero to the left
     * @return where it may be next, likeliest first: as far on as the last time, a little further, a little less, then
     *         anywhere near, ahead rather than behind; none before it has moved
     */
    IntStream after(int pixels) {
        if (pixels != at) {
            stride = pixels - at;
            at = pixels;
        }
        int direction = Integer.signum(stride);
        IntStream likely = IntStream.of(stride, stride + direction, stride - direction);
        IntStream near = IntStream.rangeClosed(1, REACH).flatMap(by -> IntStream.of(by * direction, -by * direction));
        return IntStream.concat(likely, near).filter(each -> each != 0).map(each -> pixels + each).distinct();
    }

    /** The next drag begins. */
    void forget() {
        at = 0;
        stride = 0;
    }
}
