package org.coursewright.core.geometry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.coursewright.core.geometry.WallMeeting.Kind;
import org.coursewright.measure.Length;

/**
 * What sort of meeting a node is. Its bar is what carries on through the point: the first wall that passes, or else the
 * first two ends in line with each other. Its stems are the other ends.
 */
final class NodeShape {

    private static final double STRAIGHT = 180;

    private final Node node;
    private final List<Arm> bar;
    private final List<Arm> stems;

    NodeShape(Node node) {
        this.node = node;
        this.bar = node.passing().isEmpty() ? firstInLine(node.ends()) : List.of(node.passing().get(0));
        this.stems = node.ends().stream().filter(end -> !bar.contains(end)).toList();
    }

    private static List<Arm> firstInLine(List<Arm> ends) {
        for (int i = 0; i < ends.size(); i++) {
            for (Arm other : ends.subList(i + 1, ends.size())) {
                if (ends.get(i).out().isOpposite(other.out())) {
                    return List.of(ends.get(i), other);
                }
            }
        }
        return List.of();
    }

    /** @return what carries on through the point: one wall that passes, two ends in line, or nothing */
    List<Arm> bar() {
        return bar;
    }

    /** @return the ends that are not part of the bar */
    List<Arm> stems() {
        return stems;
    }

    Kind kind() {
        if (bar.isEmpty()) {
            return switch (stems.size()) {
                case 1 -> Kind.FREE;
                case 2, 3 -> Kind.CORNER;
                default -> Kind.CROSS;
            };
        }
        if (stems.isEmpty()) {
            return Kind.INLINE;
        }
        return node.passing().size() > 1 || stemsOnBothSides() ? Kind.CROSS : Kind.TEE;
    }

    private boolean stemsOnBothSides() {
        return stems.stream().map(stem -> bar.get(0).out().cross(stem.out()).signum()).distinct().count() > 1;
    }

    /** @return whether every two ways from here are square to or in line with each other */
    boolean isSquare() {
        List<Arm> arms = arms();
        return pairs(arms).allMatch(pair -> pair[0].out().isSquareTo(pair[1].out())
                || pair[0].out().isOpposite(pair[1].out()));
    }

    WallMeeting meeting() {
        List<MeetingEnd> ends = Stream.of(stems, bar, node.passing()).flatMap(List::stream).distinct()
                .map(arm -> arm.meetingEnd(node.at())).toList();
        return new WallMeeting(kind(), ends, Length.ofUnits(node.at().x()), Length.ofUnits(node.at().y()), isSquare(),
                degrees());
    }

    private BigDecimal degrees() {
        double sharpest = pairs(arms()).mapToDouble(pair -> pair[0].out().degreesTo(pair[1].out())).min()
                .orElse(STRAIGHT);
        return BigDecimal.valueOf(sharpest).setScale(1, RoundingMode.HALF_UP);
    }

    private List<Arm> arms() {
        List<Arm> arms = new ArrayList<>(node.ends());
        node.passing().forEach(arm -> arms.addAll(List.of(arm, arm.reversed())));
        return arms;
    }

    private static Stream<Arm[]> pairs(List<Arm> arms) {
        return arms.stream().flatMap(
                arm -> arms.subList(arms.indexOf(arm) + 1, arms.size()).stream().map(other -> new Arm[]{arm, other}));
    }
}
