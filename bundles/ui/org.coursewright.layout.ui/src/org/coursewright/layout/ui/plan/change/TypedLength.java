package org.coursewright.layout.ui.plan.change;

import java.util.List;
import java.util.Optional;

import org.coursewright.core.geometry.Place;
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
        return dimension.opening().map(opening -> Optional.of(edit(dimension.kind(), opening, length, more)))
                .orElseGet(() -> stretch(dimension, more));
    }

    private static ProjectCommand edit(Dimension.Kind kind, Opening opening, Length length, Length more) {
        return switch (kind) {
            case WIDTH -> new ResizeOpeningCommand(opening, length, opening.getHeight());
            case FROM_JAMB -> new MoveOpeningCommand(opening, opening.getOffset().minus(more));
            default -> new MoveOpeningCommand(opening, opening.getOffset().plus(more));
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
