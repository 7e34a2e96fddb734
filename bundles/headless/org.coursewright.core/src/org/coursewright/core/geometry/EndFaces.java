package org.coursewright.core.geometry;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.measure.Length;

/**
 * How far each wall goes beyond each end of its centre line. The ends of a bar go to the point; stems end at the near
 * face of the bar, the thicker of two. Where there is no bar, the first two ends make a corner and any others end against
 * the first.
 */
final class EndFaces {

    private final Map<Arm, Extension> extensions = new HashMap<>();

    EndFaces(List<NodeShape> shapes) {
        shapes.forEach(this::add);
    }

    /** @return how far a wall goes beyond an end */
    Extension at(Line line, Place end) {
        return extensions.get(Arm.of(line, end));
    }

    private void add(NodeShape shape) {
        shape.bar().forEach(arm -> extensions.put(arm, Extension.NONE));
        if (shape.bar().isEmpty()) {
            addCorner(shape);
        } else {
            addStems(shape.stems(), shape.bar(), shape.isSquare());
        }
    }

    private void addCorner(NodeShape shape) {
        List<Arm> ends = shape.stems();
        if (ends.size() == 1) {
            extensions.put(ends.get(0), Extension.NONE);
            return;
        }
        extensions.put(ends.get(0), Extension.corner(ends.get(0), ends.get(1), shape.isSquare()));
        extensions.put(ends.get(1), Extension.corner(ends.get(1), ends.get(0), shape.isSquare()));
        addStems(ends.subList(2, ends.size()), ends.subList(0, 1), shape.isSquare());
    }

    private void addStems(List<Arm> stems, List<Arm> bar, boolean square) {
        Arm thickest = bar.stream().max(Comparator.comparingLong(arm -> arm.line().thickness())).orElseThrow();
        stems.forEach(stem -> extensions.put(stem,
                Extension.stem(stem, thickest.out(), thickest.line().thickness(), square)));
    }

    /** @return all measures of a wall's length */
    WallFaces faces(Line line) {
        Extension start = at(line, Place.START);
        Extension end = at(line, Place.END);
        long length = line.length();
        return new WallFaces(line.mark(), length(length), length(start.centre()), length(end.centre()),
                length(length + start.centre() + end.centre()), length(length + start.left() + end.right()),
                length(length + start.right() + end.left()));
    }

    private static Length length(long units) {
        return Length.ofUnits(units);
    }
}
