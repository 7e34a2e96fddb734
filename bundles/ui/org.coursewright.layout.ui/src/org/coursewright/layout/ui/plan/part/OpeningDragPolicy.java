package org.coursewright.layout.ui.plan.part;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.geometry.Place;
import org.coursewright.layout.ui.plan.change.OpeningShift;
import org.coursewright.layout.ui.plan.change.OpeningShift.Jambs;
import org.coursewright.layout.ui.plan.paint.FeedbackPainting;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.PlanVector;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.command.MoveOpeningCommand;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.edit.command.SetJambsCommand;
import org.eclipse.osgi.util.NLS;

/** Drags openings along their walls, and their jambs. */
final class OpeningDragPolicy extends GripPolicy {

    private final PlanOpeningPart part;

    OpeningDragPolicy(PlanOpeningPart part) {
        this.part = part;
    }

    @Override
    PlanOpeningPart part() {
        return part;
    }

    private Opening opening() {
        return part.element();
    }

    @Override
    Map<Place, PlanPoint> grips() {
        Length offset = opening().getOffset();
        return part.wall().map(wall -> Map.of(Place.START, wall.at(offset, Length.ZERO), Place.END,
                wall.at(offset.plus(opening().getWidth()), Length.ZERO))).orElse(Map.of());
    }

    /** An opening whose wall is dragged goes along with it. */
    @Override
    Optional<Dragged> drag(MoveRequest request, PlanVector by) {
        for (Object each : request.getEditParts()) {
            if (each instanceof PlanWallPart wall && wall.element() == opening().eContainer()) {
                return Optional.empty();
            }
        }
        return part.wall().map(wall -> {
            Jambs to = part.shift(wall, step(request.isFine())).moved(wall.heading().along(by));
            return dragged(wall, to, new MoveOpeningCommand(opening(), to.offset()));
        });
    }

    @Override
    Optional<Dragged> drag(GripRequest request, PlanVector by) {
        return part.wall().map(wall -> {
            OpeningShift shift = part.shift(wall, step(request.isFine()));
            Length along = wall.heading().along(by);
            Jambs to = request.place() == Place.START ? shift.nearJamb(along) : shift.farJamb(along);
            return dragged(wall, to, new SetJambsCommand(opening(), to.offset(), to.width()));
        });
    }

    private Dragged dragged(WallShape wall, Jambs to, ProjectCommand edit) {
        String words = words(edit, NLS.bind(PlanPartText.dragged, new Object[]{part.format(to.offset()),
                part.format(to.width()), part.format(wall.length().minus(to.end()))}));
        return new Dragged(Optional.of(edit),
                new FeedbackPainting(List.of(wall.part(to.offset(), to.width())), List.of(), words,
                        wall.at(to.end(), Length.ZERO), part.place(), part.state().ink()));
    }
}
