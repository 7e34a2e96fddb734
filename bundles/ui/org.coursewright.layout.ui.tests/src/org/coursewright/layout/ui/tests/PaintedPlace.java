package org.coursewright.layout.ui.tests;

import java.lang.reflect.Proxy;
import java.util.Optional;
import java.util.function.Supplier;

import org.coursewright.measure.Length;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.UpdateListener;
import org.eclipse.swt.SWT;

/** For which place of its opening the wall was laid that has been painted last. */
final class PaintedPlace {

    private Optional<Length> handed = Optional.empty();
    private Optional<Length> painted = Optional.empty();

    /**
     * From now on looks at a canvas. What is painted next shows the figures as they were when damage was last handed to the
     * canvas; a paint before may be of other parts only.
     *
     * @param canvas of the wall
     * @param shown place for which the wall is laid that its figures show, painted or not
     */
    static PaintedPlace on(FigureCanvas canvas, Supplier<Length> shown) {
        PaintedPlace place = new PaintedPlace();
        canvas.getLightweightSystem().getUpdateManager().addUpdateListener(
                onDamage(() -> place.handed = Optional.of(shown.get())));
        canvas.addListener(SWT.Paint, event -> place.painted = place.handed);
        return place;
    }

    /** A class of its own would have to name a raw type, as the framework does. */
    private static UpdateListener onDamage(Runnable run) {
        return (UpdateListener) Proxy.newProxyInstance(UpdateListener.class.getClassLoader(),
                new Class<?>[]{UpdateListener.class}, (listener, method, arguments) -> {
                    if (method.getName().equals("notifyPainting")) {
                        run.run();
                    }
                    return null;
                });
    }

    /** Whether the wall has been painted as it is laid for a place. */
    boolean is(Length place) {
        return painted.filter(place::equals).isPresent();
    }
}
