package org.coursewright.model.edit.command;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.model.building.TopPoint;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Refusal;
import org.eclipse.emf.ecore.EObject;

/** Spreads the points of a gable's top over a wall that becomes longer or shorter; their heights stay. */
public final class FitTopCommand extends ProjectCommand {

    private final Wall wall;
    private final Length longer;

    /**
     * @param wall of a project
     * @param longer by how much the wall becomes longer, less than 0 for shorter
     */
    public FitTopCommand(Wall wall, Length longer) {
        super(wall, ElementLabels.of(wall));
        this.wall = wall;
        this.longer = longer;
    }

    private Length last() {
        return wall.getTopProfile().stream().map(TopPoint::getOffset).max(Length::compareTo).orElse(Length.ZERO);
    }

    @Override
    protected Optional<Refusal> findRefusal() {
        return changesAnything() && last().plus(longer).signum() <= 0
                ? Optional.of(Refusal.of("zeroLength", ElementLabels.of(wall)))
                : Optional.empty();
    }

    @Override
    protected boolean changesAnything() {
        return longer.signum() != 0 && last().signum() > 0;
    }

    @Override
    protected void apply() {
        BigInteger before = BigInteger.valueOf(last().units());
        BigInteger after = BigInteger.valueOf(last().plus(longer).units());
        for (TopPoint point : wall.getTopProfile()) {
            BigInteger twice = BigInteger.valueOf(point.getOffset().units()).multiply(after).shiftLeft(1).add(before);
            point.setOffset(Length.ofUnits(twice.divide(before.shiftLeft(1)).longValueExact()));
        }
    }

    @Override
    protected List<? extends EObject> affected() {
        return List.of(wall);
    }
}
