package org.coursewright.layout.ui.plan.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.coursewright.layout.ui.plan.shape.PlanBounds;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.Marks;
import org.coursewright.model.edit.command.WallPosition;
import org.coursewright.model.project.Marked;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Copies walls with their openings, and turns them over.
 *
 * @param walls that were chosen, at least one
 */
public record WallCopies(List<WallShape> walls) {

    private static final String NUMBER = "\\d+$";

    public WallCopies {
        walls = List.copyOf(walls);
    }

    private PlanBounds bounds() {
        return PlanBounds.of(walls.stream().flatMap(wall -> List.of(wall.from(), wall.to()).stream()).toList())
                .orElseThrow();
    }

    /**
     * Copies them to the east, beside what is copied, with marks of their own.
     *
     * @param project that they belong to
     * @return walls in no project yet
     */
    public List<Wall> copies(Project project) {
        Length by = walls.get(0).module().round(bounds().width().plus(walls.get(0).module().step().times(4)));
        Set<String> taken = new HashSet<>();
        List<Wall> copies = new ArrayList<>();
        for (WallShape wall : walls) {
            Wall copy = EcoreUtil.copy(wall.wall());
            copy.setFromX(copy.getFromX().plus(by));
            copy.setToX(copy.getToX().plus(by));
            mark(copy, project, taken);
            for (Opening opening : copy.getOpenings()) {
                mark(opening, project, taken);
            }
            copies.add(copy);
        }
        return copies;
    }

    /** Counts on from the free mark that the project knows, for copies are not in the project yet. */
    private static void mark(Marked copy, Project project, Set<String> taken) {
        String prefix = copy.getMark() == null ? "" : copy.getMark().replaceAll(NUMBER, "");
        String free = Marks.free(copy.eClass(), project, prefix);
        String kind = copy.eClass().getName() + " ";
        int number = Integer.parseInt(free.substring(prefix.length()));
        while (taken.contains(kind + prefix + number) || isTaken(copy, project, prefix + number)) {
            number++;
        }
        taken.add(kind + prefix + number);
        copy.setMark(prefix + number);
    }

    private static boolean isTaken(Marked copy, Project project, String mark) {
        return Marks.refusal(copy, project, mark).isPresent();
    }

    /**
     * Turns them over where they are.
     *
     * @param sideways whether left and right are exchanged, else top and bottom
     * @return where they are to lie
     */
    public List<WallPosition> mirrored(boolean sideways) {
        return walls.stream().map(wall -> {
            PlanPoint from = mirrored(wall.from(), sideways);
            PlanPoint to = mirrored(wall.to(), sideways);
            return new WallPosition(wall.wall(), from.x(), from.y(), to.x(), to.y(), Length.ZERO);
        }).toList();
    }

    private PlanPoint mirrored(PlanPoint point, boolean sideways) {
        PlanPoint low = bounds().southWest();
        PlanPoint high = bounds().northEast();
        return sideways
                ? new PlanPoint(low.x().plus(high.x()).minus(point.x()), point.y())
                : new PlanPoint(point.x(), low.y().plus(high.y()).minus(point.y()));
    }
}
