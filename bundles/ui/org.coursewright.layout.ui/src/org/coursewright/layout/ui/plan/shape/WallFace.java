package org.coursewright.layout.ui.plan.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.coursewright.measure.Length;

/** One long face of a wall, with the gaps at which other walls run in. */
final class WallFace {

    private final PlanPoint from;
    private final PlanPoint to;
    private final List<Gap> gaps = new ArrayList<>();

    private record Gap(Length from, Length to) {
    }

    WallFace(PlanPoint from, PlanPoint to) {
        this.from = from;
        this.to = to;
    }

    void interrupt(PlanEdge gap) {
        if (!from.equals(to)) {
            Heading heading = Heading.of(from.to(to));
            Length one = heading.along(from.to(gap.from()));
            Length other = heading.along(from.to(gap.to()));
            gaps.add(one.isLessThan(other) ? new Gap(one, other) : new Gap(other, one));
        }
    }

    List<PlanEdge> edges() {
        if (from.equals(to)) {
            return List.of();
        }
        List<PlanEdge> edges = new ArrayList<>();
        Heading heading = Heading.of(from.to(to));
        Length begin = Length.ZERO;
        Length length = from.distance(to);
        gaps.sort(Comparator.comparing(Gap::from));
        for (Gap gap : gaps) {
            if (gap.from().isGreaterThan(begin)) {
                edges.add(edge(heading, begin, gap.from().isLessThan(length) ? gap.from() : length));
            }
            begin = gap.to().isGreaterThan(begin) ? gap.to() : begin;
        }
        if (begin.isLessThan(length)) {
            edges.add(edge(heading, begin, length));
        }
        return edges;
    }

    private PlanEdge edge(Heading heading, Length begin, Length end) {
        return new PlanEdge(from.plus(heading.ahead(begin)), from.plus(heading.ahead(end)));
    }
}
