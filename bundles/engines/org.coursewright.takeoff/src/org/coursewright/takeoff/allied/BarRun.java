package org.coursewright.takeoff.allied;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * One continuous line of steel made of bars that lap.
 *
 * @param bar its size
 * @param length to be covered, hooks and bends included; greater than zero
 * @param stock length of a bar as delivered, more than the lap
 * @param lap where two bars meet, zero or more
 */
public record BarRun(Bar bar, Length length, Length stock, Length lap) {

    public BarRun {
        Objects.requireNonNull(bar, "bar");
        require(length.signum() > 0, "A run of bar %s is %s long: it must be above zero.", bar.designation(), length);
        require(lap.signum() >= 0 && stock.isGreaterThan(lap),
                "Bars of %s cannot lap by %s: give a lap from zero to less than the bar.", stock, lap);
    }

    /** @return bars that it is made of */
    public long bars() {
        return Math.max(1, AlliedFormulas.cover(length.minus(lap), stock.minus(lap)));
    }

    /** @return length of steel in place: the run and a lap for each bar but one */
    public Length steel() {
        return length.plus(lap.times(bars() - 1));
    }
}
