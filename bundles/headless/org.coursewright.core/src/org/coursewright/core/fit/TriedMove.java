package org.coursewright.core.fit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.KeepClear;
import org.coursewright.bond.advice.WallMove;
import org.coursewright.core.bond.Abutment;
import org.coursewright.core.bond.BondTranslator;
import org.coursewright.core.bond.Translation;
import org.coursewright.measure.Length;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.project.Project;

/**
 * A wall moved on a copy of the project, and moved back.
 *
 * @param copy of the project, as it is planned before and after
 * @param planned what was read of it
 */
record TriedMove(Project copy, Translation planned) {

    /**
     * What comes of a move.
     *
     * @return the faces that change, empty if the wall cannot be moved so far or the building would not be the same: other
     *         walls would meet, a wall would end before an opening, or something would be wrong that is not now
     */
    Optional<WallMove.Place> place(SidewaysMove move, Length change) {
        ProjectCommand command = move.command(change);
        if (!command.canExecute()) {
            return Optional.empty();
        }
        command.execute();
        Translation moved = BondTranslator.translate(copy);
        command.undo();
        return isSame(moved) ? Optional.of(place(moved, change)) : Optional.empty();
    }

    private WallMove.Place place(Translation moved, Length change) {
        List<WallFace> faces = new ArrayList<>();
        List<KeepClear> keepClear = new ArrayList<>();
        for (int index = 0; index < planned.request().walls().size(); index++) {
            WallFace face = moved.request().walls().get(index);
            List<Abutment> abutments = abutments(moved, face.mark());
            if (!face.equals(planned.request().walls().get(index))
                    || !abutments.equals(abutments(planned, face.mark()))) {
                faces.add(face);
                abutments.forEach(each -> keepClear.add(new KeepClear(each.wall(), each.from(), each.to())));
            }
        }
        return new WallMove.Place(change, faces, keepClear);
    }

    private boolean isSame(Translation moved) {
        Set<Object> known = new HashSet<>(planned.findings());
        boolean alike = moved.request().meetings().equals(planned.request().meetings())
                && moved.request().walls().size() == planned.request().walls().size()
                && moved.abutments().size() == planned.abutments().size() && known.containsAll(moved.findings());
        return alike && moved.request().walls().stream().allMatch(this::isAlike)
                && moved.abutments().stream().noneMatch(each -> isBeforeOpening(each, moved));
    }

    private boolean isAlike(WallFace face) {
        return planned.request().walls().stream().filter(each -> each.mark().equals(face.mark()))
                .anyMatch(each -> each.courses().size() == face.courses().size()
                        && each.obstacles().size() == face.obstacles().size());
    }

    private boolean isBeforeOpening(Abutment abutment, Translation moved) {
        return !planned.abutments().contains(abutment) && moved.request().walls().stream()
                .filter(face -> face.mark().equals(abutment.wall())).flatMap(face -> face.obstacles().stream())
                .anyMatch(each -> each.kind() == Obstacle.Kind.OPENING && each.from().isLessThan(abutment.to())
                        && abutment.from().isLessThan(each.to()));
    }

    private static List<Abutment> abutments(Translation read, String mark) {
        return read.abutments().stream().filter(each -> each.wall().equals(mark)).toList();
    }
}
