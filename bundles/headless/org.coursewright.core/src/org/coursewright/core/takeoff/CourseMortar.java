package org.coursewright.core.takeoff;

import java.util.List;
import java.util.Objects;

import org.coursewright.measure.Quantity;

/**
 * Mortar of one course and of the bed joint under it, in cubic metres and without waste.
 *
 * @param course its number, the first is 1
 * @param bed in the bed joint
 * @param head in head joints between whole units and specials
 * @param besideCuts in head joints that touch a cut piece
 * @param net all of it
 * @param lines how it came about, one for each run and place that has mortar
 */
public record CourseMortar(int course, Quantity bed, Quantity head, Quantity besideCuts, Quantity net,
        List<TakeoffLine> lines) {

    public CourseMortar {
        Objects.requireNonNull(bed, "bed");
        Objects.requireNonNull(head, "head");
        Objects.requireNonNull(besideCuts, "besideCuts");
        Objects.requireNonNull(net, "net");
        lines = List.copyOf(lines);
    }
}
