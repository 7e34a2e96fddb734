package org.coursewright.takeoff.quantities;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Volume;

/**
 * What is mixed of one mortar.
 *
 * @param mix its name
 * @param courses where it goes, such as {@code W1/1}
 * @param net in place, by where it lies
 * @param waste share on top
 */
public record MortarOrder(String mix, List<String> courses, MortarVolumes net, Fraction waste) {

    public MortarOrder {
        Objects.requireNonNull(mix, "mix");
        courses = List.copyOf(courses);
        Objects.requireNonNull(net, "net");
        Objects.requireNonNull(waste, "waste");
    }

    /** @return both together, which are of the same mix with the same waste */
    MortarOrder plus(MortarOrder other) {
        return new MortarOrder(mix, Stream.concat(courses.stream(), other.courses.stream()).toList(), net.plus(
                other.net), waste);
    }

    /** @return volume to mix: net and waste */
    public Volume ordered() {
        return net.net().times(Fraction.ONE.plus(waste));
    }
}
