package org.coursewright.core.takeoff;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;
import org.coursewright.takeoff.quantities.BuildingQuantities;
import org.coursewright.takeoff.quantities.LaidWall;
import org.coursewright.takeoff.quantities.UnitRule;

/** Takes off a building from its layout: the one call that screens, commands and sheets share. */
public final class ProjectTakeoff {

    private ProjectTakeoff() {
    }

    /**
     * Takes off all walls laid.
     *
     * @param project the project, not null; it is not changed
     * @param layout how that project is laid, not null
     * @param progress hears whether the result is still wanted, not null
     * @return what the building takes
     * @throws java.util.concurrent.CancellationException if it is no longer wanted
     */
    public static TakeoffOutcome of(Project project, LayoutOutcome layout, Progress progress) {
        return of(ProjectBrief.of(project), layout, progress);
    }

    /**
     * Takes off one wall as if it alone were built: its cut pieces are not nested with those of others.
     *
     * @param project the project, not null; it is not changed
     * @param layout how that project is laid, not null
     * @param mark the wall's mark, as in the layout
     * @param progress hears whether the result is still wanted, not null
     * @return what the wall takes
     * @throws IllegalArgumentException if the layout has no such wall
     * @throws java.util.concurrent.CancellationException if it is no longer wanted
     */
    public static TakeoffOutcome ofWall(Project project, LayoutOutcome layout, String mark, Progress progress) {
        if (layout.faces().stream().noneMatch(face -> face.mark().equals(mark))) {
            throw new IllegalArgumentException("The layout has no wall \"%s\".".formatted(mark));
        }
        ProjectBrief all = ProjectBrief.of(project);
        return of(new ProjectBrief(all.walls().stream().filter(wall -> wall.mark().equals(mark)).toList(),
                all.format()), layout, progress);
    }

    static TakeoffOutcome of(ProjectBrief project, LayoutOutcome layout, Progress progress) {
        List<LaidBrief> walls = IntStream.range(0, layout.faces().size())
                .mapToObj(i -> project.wall(layout.faces().get(i).mark()).map(
                        brief -> new LaidBrief(brief, layout.faces().get(i), layout.result().walls().get(i))))
                .flatMap(Optional::stream).toList();
        BuildingQuantities quantities = TakeoffShares.USUAL.engine(rules(walls)).measure(
                walls.stream().map(LaidBrief::laid).toList(), progress);
        List<MeasuredWall> measured = IntStream.range(0, walls.size()).mapToObj(i -> new MeasuredWall(
                walls.get(i).brief(), WallFaceArea.of(walls.get(i).layout(), walls.get(i).brief()),
                quantities.walls().get(i))).toList();
        return new TakeoffReport(measured, quantities).outcome(
                new Assumptions(walls, project.format(), TakeoffShares.USUAL).sentences(), layout.findings());
    }

    /** A wall's brief, what was asked for it, and how it is laid. */
    record LaidBrief(WallBrief brief, WallFace face, WallLayout layout) {

        LaidWall laid() {
            return LayoutTranslator.wall(layout, brief);
        }
    }

    private static Map<String, UnitRule> rules(List<LaidBrief> walls) {
        Map<String, UnitRule> rules = new HashMap<>();
        walls.forEach(wall -> rules.put(wall.brief().unit().type(),
                new UnitRule(wall.face().stock().kerf(), false, TakeoffShares.USUAL.breakage())));
        return rules;
    }
}
