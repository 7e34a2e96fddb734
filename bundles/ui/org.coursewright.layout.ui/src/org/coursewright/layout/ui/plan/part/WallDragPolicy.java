package org.coursewright.layout.ui.plan.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.geometry.Place;
import org.coursewright.layout.ui.plan.change.WallShift;
import org.coursewright.layout.ui.plan.paint.FeedbackPainting;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.PlanVector;
import org.coursewright.layout.ui.plan.shape.WallModule;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.layout.ui.plan.snap.Snapping;
import org.coursewright.measure.Length;
import org.coursewright.model.edit.command.MoveWallsCommand;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.edit.command.StretchWallsCommand;
import org.coursewright.model.edit.command.WallPosition;
import org.eclipse.osgi.util.NLS;

/** Drags walls, all that are selected together, and ends of walls; what they meet goes along. */
final class WallDragPolicy extends GripPolicy {

    private final PlanWallPart part;

    WallDragPolicy(PlanWallPart part) {
        this.part = part;
    }

    @Override
    PlanWallPart part() {
        return part;
    }

    @Override
    Map<Place, PlanPoint> grips() {
        return part.shape().map(wall -> Map.of(Place.START, wall.from(), Place.END, wall.to())).orElse(Map.of());
    }

    /** The first of the walls that are dragged speaks for all of them. */
    @Override
    Optional<Dragged> drag(MoveRequest request, PlanVector by) {
        List<WallShape> walls = new ArrayList<>();
        for (Object each : request.getEditParts()) {
            if (each instanceof PlanWallPart wall) {
                wall.shape().ifPresent(walls::add);
            }
        }
        if (walls.isEmpty() || walls.get(0).wall() != part.element()) {
            return Optional.empty();
        }
        Snapping snapping = Snapping.in(part.state().shape(), walls, reach(), walls.get(0).module(),
                step(request.isFine()));
        WallShift.Outcome outcome = new WallShift(part.state().shape()).move(walls, by, snapping);
        return Optional.of(dragged(outcome, walls.get(0).middle().plus(outcome.by()), moved(outcome.by()),
                positions -> new MoveWallsCommand(positions, walls.size())));
    }

    private String moved(PlanVector by) {
        return NLS.bind(PlanPartText.moved, part.format(by.length()));
    }

    @Override
    Optional<Dragged> drag(GripRequest request, PlanVector by) {
        return part.shape().map(wall -> {
            Snapping snapping = Snapping.in(part.state().shape(), List.of(wall), reach(), wall.module(),
                    step(request.isFine()));
            WallShift.Outcome outcome = new WallShift(part.state().shape()).moveEnd(wall, request.place(), by,
                    request.isAlone(), snapping);
            PlanPoint from = outcome.ends().end(wall, Place.START);
            PlanPoint to = outcome.ends().end(wall, Place.END);
            Length more = wall.length().minus(wall.from().distance(wall.to()));
            return dragged(outcome, outcome.ends().end(wall, request.place()),
                    part.format(from.distance(to).plus(more)), positions -> new StretchWallsCommand(positions, 1));
        });
    }

    private Dragged dragged(WallShift.Outcome outcome, PlanPoint at, String words, MakeEdit make) {
        List<WallPosition> positions = outcome.ends().positions();
        Optional<ProjectCommand> edit = positions.isEmpty() ? Optional.empty() : Optional.of(make.of(positions));
        List<List<PlanPoint>> outlines = outcome.ends().changed().stream()
                .map(wall -> outline(outcome.ends().end(wall, Place.START), outcome.ends().end(wall, Place.END),
                        wall.module()))
                .toList();
        String said = edit.map(each -> words(each, words)).orElse(words);
        return new Dragged(edit, new FeedbackPainting(outlines, outcome.marks(), said, at, part.place(),
                part.state().ink()));
    }

    @FunctionalInterface
    private interface MakeEdit {
        ProjectCommand of(List<WallPosition> positions);
    }

    private static List<PlanPoint> outline(PlanPoint from, PlanPoint to, WallModule module) {
        if (from.equals(to)) {
            return List.of(from, to);
        }
        Heading left = Heading.of(from.to(to)).left();
        PlanVector half = left.ahead(module.half());
        return List.of(from.plus(half), to.plus(half), to.plus(half.reversed()), from.plus(half.reversed()));
    }
}
