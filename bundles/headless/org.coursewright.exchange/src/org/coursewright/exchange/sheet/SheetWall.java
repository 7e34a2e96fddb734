package org.coursewright.exchange.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.coursewright.bond.Run;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;

/**
 * A wall, how it is laid, and what its sheet says about it.
 *
 * @param project the project's name
 * @param unit mark and size of its unit type
 * @param bond the bond's name
 * @param thickness across the wall
 * @param unitHeight of the unit as laid
 * @param openings from start to end
 * @param top of the wall from start to end, at least two points
 * @param format the project's display unit
 * @param face what was asked of the bond engine
 * @param layout what it answered
 */
public record SheetWall(String project, String unit, String bond, Length thickness, Length unitHeight,
        List<SheetOpening> openings, List<TopMark> top, LengthFormat format, WallFace face, WallLayout layout) {

    public SheetWall {
        Objects.requireNonNull(project, "project");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(bond, "bond");
        Objects.requireNonNull(thickness, "thickness");
        Objects.requireNonNull(unitHeight, "unitHeight");
        openings = List.copyOf(openings);
        top = List.copyOf(top);
        Objects.requireNonNull(format, "format");
        Objects.requireNonNull(face, "face");
        Objects.requireNonNull(layout, "layout");
    }

    /** @return its mark */
    public String mark() {
        return face.mark();
    }

    /** @return from outer start face to outer end face */
    public Length length() {
        return face.length();
    }

    /** @return where its masonry begins: zero, or less if it is bonded into a wall it starts at */
    public Length masonryFrom() {
        return Stream.concat(Stream.of(Length.ZERO), runs().map(Run::from)).min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** @return where its masonry ends: its length, or more if it is bonded into a wall it ends at */
    public Length masonryTo() {
        return Stream.concat(Stream.of(length()), runs().map(Run::to)).max(Comparator.naturalOrder()).orElseThrow();
    }

    private Stream<Run> runs() {
        return layout.courses().stream().flatMap(course -> course.runs().stream());
    }

    /** @return its highest point above its base */
    public Length highest() {
        return top.stream().map(TopMark::height).max(Comparator.naturalOrder()).orElse(Length.ZERO);
    }
}
