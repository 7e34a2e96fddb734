package org.coursewright.core.trial;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.AdviceRequest;
import org.coursewright.bond.advice.BondAdvisor;
import org.coursewright.bond.advice.Dimension;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.advice.KeepClear;
import org.coursewright.bond.advice.ProfileRequest;
import org.coursewright.core.bond.BondTranslator;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.Translation;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Which cuts a wall needs for every place, or every width, that one of its openings could have. The project is read on the
 * editing thread by {@link #of}; all else may be called from any thread.
 */
public final class OpeningAdvice {

    private final BondRequest wall;
    private final BondResult laid;
    private final List<KeepClear> keepClear;
    private final String mark;
    private final String opening;

    private OpeningAdvice(BondRequest wall, BondResult laid, List<KeepClear> keepClear, String mark, String opening) {
        this.wall = wall;
        this.laid = laid;
        this.keepClear = keepClear;
        this.mark = mark;
        this.opening = opening;
    }

    /**
     * Reads what there is to ask.
     *
     * @param opening of a wall of a project
     * @param laid how the building is laid at present: for the handing of its corners, and to be fitted to changes
     * @return the advice, empty if the opening has no mark or its wall is not laid
     */
    public static Optional<OpeningAdvice> of(Opening opening, LayoutOutcome laid) {
        String mark = ((Wall) opening.eContainer()).getMark();
        Translation read = BondTranslator.translate((Project) EcoreUtil.getRootContainer(opening));
        BondRequest wall = new WallAlone(mark, laid.result().throughOnOdd()).in(read.request());
        if (wall.walls().isEmpty() || opening.getMark() == null) {
            return Optional.empty();
        }
        List<KeepClear> kept = read.abutments().stream().filter(each -> each.wall().equals(mark))
                .map(each -> new KeepClear(each.wall(), each.from(), each.to())).toList();
        return Optional.of(new OpeningAdvice(wall, laid.result(), kept, mark, opening.getMark()));
    }

    /**
     * Looks in a hurry at every value near the planned one of a dimension of the opening: nothing is laid, the layout at hand
     * is fitted to every value.
     *
     * @param dimension offset, width, or where the near jamb is while the other stays
     * @param reach how far either way, zero or more
     * @param step between values, greater than zero
     * @param progress may cancel it
     * @return cuts by value; changes are to the wall's end or, negative, to its start
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public DimensionProfile soon(Dimension dimension, Length reach, Length step, Progress progress) {
        Adjustable adjustable = Adjustable.within(mark, Optional.of(opening), dimension, reach);
        return BondAdvisor.standard().profile(new ProfileRequest(wall, laid, adjustable, keepClear, step), progress);
    }

    /**
     * Looks at every value near the planned one of a dimension of the opening, and lays some of them.
     *
     * @param dimension offset, width, or where the near jamb is while the other stays
     * @param reach how far either way, zero or more
     * @param step between values, greater than zero
     * @param progress may cancel it
     * @return cuts by value
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public DimensionProfile profile(Dimension dimension, Length reach, Length step, Progress progress) {
        Adjustable adjustable = Adjustable.within(mark, Optional.of(opening), dimension, reach);
        return BondAdvisor.standard().advise(
                new AdviceRequest(wall, List.of(adjustable), keepClear, step, Optional.empty()), progress).profiles()
                .get(0);
    }
}
