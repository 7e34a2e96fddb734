package org.coursewright.layout.ui.plan.change;

import java.util.List;
import java.util.Optional;

import org.coursewright.core.geometry.Place;
import org.coursewright.layout.ui.plan.change.OpeningShift.Jambs;
import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanMeeting;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.command.MoveOpeningCommand;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.edit.command.ResizeOpeningCommand;
import org.coursewright.model.edit.command.StretchWallsCommand;
import org.coursewright.model.edit.command.WallPosition;

/**
 * What it takes for a dimension to become another length: the opening at its end moves or becomes wider, or the wall at
 * its far end moves.
 *
 * @param storey as it is before
 */
public record TypedLength(StoreyShape storey) {

    /**
     * @param dimension of the storey
     * @param length that it is to have
     * @return the edit, empty if nothing can give way
     */
    public Optional<ProjectCommand> edit(Dimension dimension, Length length) {
        Length more = length.minus(dimension.length());
        return dimension.opening()
                .map(opening -> Optional.of(edit(dimension.kind(), opening, jambs(dimension.kind(), opening, more))))
                .orElseGet(() -> stretch(dimension, more));
    }

    private static ProjectCommand edit(Dimension.Kind kind, Opening opening, Jambs jambs) {
        return kind == Dimension.Kind.WIDTH
                ? new ResizeOpeningCommand(opening, jambs.width(), opening.getHeight())
                : new MoveOpeningCommand(opening, jambs.offset());
    }

    /**
     * @param dimension of the storey
     * @param length that it is to have
     * @return where the opening that gives way would be, empty unless it would then reach beyond the end of its wall
     */
    public Optional<Jambs> beyondTheWall(Dimension dimension, Length length) {
        Length more = length.minus(dimension.length());
        return dimension.opening().map(opening -> jambs(dimension.kind(), opening, more))
                .filter(jambs -> storey.wall(dimension.wall())
                        .filter(wall -> jambs.end().isGreaterThan(wall.length())).isPresent());
    }

    private static Jambs jambs(Dimension.Kind kind, Opening opening, Length more) {
        Length offset = opening.getOffset();
        Length width = opening.getWidth();
        return switch (kind) {
            case WIDTH -> new Jambs(offset, width.plus(more));
            case FROM_JAMB -> new Jambs(offset.minus(more), width);
            default -> new Jambs(offset.plus(more), width);
        };
    }

    private Optional<ProjectCommand> stretch(Dimension dimension, Length more) {
        return storey.wall(dimension.wall()).map(wall -> stretched(dimension, wall, more))
                .map(moved -> firstOf(dimension, moved)).filter(positions -> !positions.isEmpty())
                .map(positions -> new StretchWallsCommand(positions, 1));
    }

    private WallEnds stretched(Dimension dimension, WallShape wall, Length more) {
        Heading heading = wall.heading();
        List<PlanMeeting.End> seeds = dimension.far().flatMap(storey::wall).map(Stretching::ends)
                .orElseGet(() -> List.of(new PlanMeeting.End(wall.wall(), Place.END)));
        return new Stretching(storey).move(seeds, heading.ahead(more), heading);
    }

    /** The wall that was measured comes first, for it is what the history names. */
    private static List<WallPosition> firstOf(Dimension dimension, WallEnds moved) {
        return moved.positions().stream()
                .sorted((a, b) -> Boolean.compare(b.wall() == dimension.wall(), a.wall() == dimension.wall())).toList();
    }
}
