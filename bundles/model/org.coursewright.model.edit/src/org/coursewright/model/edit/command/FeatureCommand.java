package org.coursewright.model.edit.command;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.FeatureRules;
import org.coursewright.model.edit.Refusal;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** An edit that gives one or several features of one element new values, all or none. */
abstract class FeatureCommand extends ProjectCommand {

    private final EObject owner;
    private final Map<EStructuralFeature, Object> values = new LinkedHashMap<>();

    /**
     * @param owner whose features are set
     * @param labelValues what the label is filled with
     */
    FeatureCommand(EObject owner, Object... labelValues) {
        super(owner, labelValues);
        this.owner = owner;
    }

    /**
     * To be called in the constructor.
     *
     * @param feature of the owner, no containment
     * @param value its new value, null for none, a collection for many
     */
    final void set(EStructuralFeature feature, Object value) {
        if (!owner.eClass().getEAllStructuralFeatures().contains(feature)
                || feature instanceof EReference reference && reference.isContainment()) {
            throw new IllegalArgumentException(
                    "%s has no simple feature %s.".formatted(owner.eClass().getName(), feature.getName()));
        }
        values.put(feature, value instanceof Collection<?> many ? List.copyOf(many) : value);
    }

    @Override
    protected final Optional<Refusal> findRefusal() {
        return values.entrySet().stream().map(each -> refusal(each.getKey(), each.getValue()))
                .flatMap(Optional::stream).findFirst().or(() -> CombinationRules.refusal(owner, values));
    }

    private Optional<Refusal> refusal(EStructuralFeature feature, Object value) {
        if (value instanceof EObject element && !isInProject(element)) {
            return Optional.of(Refusal.of("elsewhere", ElementLabels.of(element)));
        }
        return FeatureRules.refusal(owner, feature, value);
    }

    @Override
    protected final boolean changesAnything() {
        return values.entrySet().stream().anyMatch(each -> !Objects.equals(owner.eGet(each.getKey()), each.getValue()));
    }

    @Override
    protected final void apply() {
        values.forEach((feature, value) -> {
            if (!Objects.equals(owner.eGet(feature), value)) {
                owner.eSet(feature, value);
            }
        });
    }

    @Override
    protected final List<EObject> affected() {
        return List.of(owner);
    }
}
