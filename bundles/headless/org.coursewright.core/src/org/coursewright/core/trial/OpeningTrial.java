package org.coursewright.core.trial;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondSolver;
import org.coursewright.core.bond.BondTranslator;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.Translation;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * How a wall would be laid were one of its openings elsewhere. Works on a copy of the project, made on the editing thread by
 * the constructor; all else may be called from any thread. Corners stay handed as they are. A first answer does not wait for
 * one that takes longer.
 */
public final class OpeningTrial {

    private final Project copy;
    private final Opening opening;
    private final WallAlone alone;
    private final BuildingLayout soon = new BuildingLayout(BondSolver.remembering());
    private final BuildingLayout well = new BuildingLayout(BondSolver.remembering());

    /**
     * @param opening of a wall of a project
     * @param laid how the building is laid at present, for the handing of its corners
     */
    public OpeningTrial(Opening opening, LayoutOutcome laid) {
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        copy = (Project) copier.copy(EcoreUtil.getRootContainer(opening));
        copier.copyReferences();
        this.opening = (Opening) copier.get(opening);
        alone = new WallAlone(((Wall) opening.eContainer()).getMark(), laid.result().throughOnOdd());
    }

    /**
     * A first answer.
     *
     * @param offset of the opening
     * @param width of the opening
     * @param progress may cancel it
     * @return how the wall is laid then, without the wall if it cannot be laid so
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public LayoutOutcome first(Length offset, Length width, Progress progress) {
        return soon.first(translated(offset, width), progress);
    }

    /**
     * The answer, which takes longer than a first one.
     *
     * @param offset of the opening
     * @param width of the opening
     * @param progress may cancel it
     * @return how the wall is laid then, without the wall if it cannot be laid so
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public LayoutOutcome improved(Length offset, Length width, Progress progress) {
        return well.lay(translated(offset, width), progress);
    }

    private synchronized Translation translated(Length offset, Length width) {
        opening.setOffset(offset);
        opening.setWidth(width);
        return byItself(BondTranslator.translate(copy));
    }

    private Translation byItself(Translation building) {
        BondRequest wall = alone.in(building.request());
        return new Translation(wall, building.references(), building.abutments(), building.format(),
                building.findings());
    }
}
