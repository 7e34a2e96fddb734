package org.coursewright.model.edit.command;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.model.edit.FeatureRules;
import org.coursewright.model.edit.Refusal;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** An edit that gives an element of the project, which is made if need be, all the attributes of a draft. */
abstract class CopyCommand extends ProjectCommand {

    private final EObject owner;
    private final EObject draft;
    private EObject target;

    /**
     * @param owner element of the project that holds the target
     * @param target element to be changed, or null if there is none yet
     * @param draft element of the same class in no project
     * @param labelValues what the label is filled with
     */
    CopyCommand(EObject owner, EObject target, EObject draft, Object... labelValues) {
        super(owner, labelValues);
        this.owner = owner;
        this.target = target;
        this.draft = Objects.requireNonNull(draft, "draft");
    }

    /** @return a new target, put into its place */
    protected abstract EObject make();

    @Override
    protected final Optional<Refusal> findRefusal() {
        Map<EStructuralFeature, Object> values = new HashMap<>();
        for (EAttribute attribute : draft.eClass().getEAllAttributes()) {
            Object value = draft.eGet(attribute);
            Optional<Refusal> refusal = FeatureRules.refusal(draft, attribute, value);
            if (refusal.isPresent()) {
                return refusal;
            }
            values.put(attribute, value);
        }
        return CombinationRules.refusal(draft, values);
    }

    @Override
    protected final boolean changesAnything() {
        return target == null || draft.eClass().getEAllAttributes().stream()
                .anyMatch(each -> !Objects.equals(target.eGet(each), draft.eGet(each)));
    }

    @Override
    protected final void apply() {
        if (target == null) {
            target = make();
        }
        for (EAttribute attribute : draft.eClass().getEAllAttributes()) {
            if (!Objects.equals(target.eGet(attribute), draft.eGet(attribute))) {
                target.eSet(attribute, draft.eGet(attribute));
            }
        }
    }

    @Override
    protected final List<EObject> affected() {
        return List.of(target == null || !isInProject(target) ? owner : target);
    }
}
