package org.coursewright.model.edit.command;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.model.building.Pin;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.EditTexts;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.FeatureRules;
import org.coursewright.model.edit.Refusal;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Fixes a joint or a piece at one place of a wall, in place of what was fixed there before. */
public final class PinCommand extends ProjectCommand {

    private final Wall wall;
    private final Pin pin;
    private final List<Pin> replaced;

    /**
     * @param wall of a project
     * @param pin with its values, of no wall yet
     * @param replaced pins of the wall that the new one takes the place of
     */
    public PinCommand(Wall wall, Pin pin, List<? extends Pin> replaced) {
        super(wall);
        this.wall = wall;
        this.pin = Objects.requireNonNull(pin, "pin");
        this.replaced = List.copyOf(replaced);
    }

    @Override
    public String getLabel() {
        return EditTexts.of("command.PinCommand." + pin.eClass().getName(), ElementLabels.of(wall));
    }

    @Override
    protected Optional<Refusal> findRefusal() {
        if (pin.eContainer() != null) {
            return Optional.of(Refusal.of("present", ElementLabels.of(pin)));
        }
        return pin.eClass().getEAllAttributes().stream()
                .map(feature -> FeatureRules.refusal(pin, feature, pin.eGet(feature))).flatMap(Optional::stream)
                .findFirst();
    }

    @Override
    protected boolean changesAnything() {
        return replaced.size() != 1 || !EcoreUtil.equals(replaced.get(0), pin);
    }

    @Override
    protected void apply() {
        wall.getPins().removeAll(replaced);
        wall.getPins().add(pin);
    }

    @Override
    protected List<EObject> affected() {
        return List.of(wall);
    }
}
