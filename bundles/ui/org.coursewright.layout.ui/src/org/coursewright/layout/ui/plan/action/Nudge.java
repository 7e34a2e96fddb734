package org.coursewright.layout.ui.plan.action;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.layout.ui.plan.change.OpeningShift;
import org.coursewright.layout.ui.plan.change.WallShift;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.command.AlignOpeningsCommand;
import org.coursewright.model.edit.command.MoveOpeningCommand;
import org.coursewright.model.edit.command.MoveWallsCommand;
import org.coursewright.model.edit.command.WallPosition;

/**
 * Moves what is selected one step with the arrow keys: walls with what meets them, openings along their walls.
 *
 * @param selected what is selected
 * @param fine whether by the fine step instead of the module
 */
public record Nudge(PlanSelection selected, boolean fine) {

    private static final double ALONG = 0.5;

    /**
     * @param heading of the arrow
     * @return whether there was something to be moved
     */
    public boolean go(Heading heading) {
        List<WallShape> walls = selected.walls();
        Map<Opening, WallShape> openings = selected.openings();
        if (!walls.isEmpty()) {
            move(walls, heading);
        } else if (!openings.isEmpty()) {
            move(openings, heading);
        }
        return !walls.isEmpty() || !openings.isEmpty();
    }

    private Optional<LengthStep> step() {
        return fine ? Optional.of(LengthStep.of(selected.state().format().unit())) : Optional.empty();
    }

    private void move(List<WallShape> walls, Heading heading) {
        Length step = step().map(LengthStep::step).orElseGet(() -> walls.get(0).module().step());
        List<WallPosition> positions = new WallShift(selected.state().shape()).shift(walls, heading.ahead(step))
                .positions();
        if (!positions.isEmpty()) {
            selected.execute(new MoveWallsCommand(positions, walls.size()));
        }
    }

    private void move(Map<Opening, WallShape> openings, Heading heading) {
        Map<Opening, Length> offsets = new LinkedHashMap<>();
        openings.forEach((opening, wall) -> {
            double along = wall.heading().dot(heading);
            if (Math.abs(along) > ALONG) {
                offsets.put(opening, new OpeningShift(wall,
                        new OpeningShift.Jambs(opening.getOffset(), opening.getWidth()), step())
                        .nudged(along > 0 ? 1 : -1).offset());
            }
        });
        if (offsets.size() == 1) {
            offsets.forEach((opening, offset) -> selected.execute(new MoveOpeningCommand(opening, offset)));
        } else if (!offsets.isEmpty()) {
            selected.execute(new AlignOpeningsCommand(offsets));
        }
    }
}
