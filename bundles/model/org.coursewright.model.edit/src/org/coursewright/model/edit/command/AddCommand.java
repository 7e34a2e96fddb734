package org.coursewright.model.edit.command;

import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.FeatureRules;
import org.coursewright.model.edit.Refusal;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** An edit that puts a new element, with all it holds, into the project. */
abstract class AddCommand extends ProjectCommand {

    private final EObject added;

    /**
     * @param scope an element of the project
     * @param added in no project yet, with its values
     */
    AddCommand(EObject scope, EObject added) {
        super(scope, ElementLabels.of(Objects.requireNonNull(added, "added")));
        this.added = added;
    }

    @Override
    protected final Optional<Refusal> findRefusal() {
        if (added.eContainer() != null || added.eResource() != null) {
            return Optional.of(Refusal.of("present", ElementLabels.of(added)));
        }
        for (Iterator<EObject> all = EcoreUtil.getAllContents(List.of(added)); all.hasNext();) {
            Optional<Refusal> refusal = refusal(all.next());
            if (refusal.isPresent()) {
                return refusal;
            }
        }
        return Optional.empty();
    }

    private Optional<Refusal> refusal(EObject element) {
        for (EStructuralFeature feature : element.eClass().getEAllAttributes()) {
            Optional<Refusal> refusal = FeatureRules.refusal(element, feature, element.eGet(feature));
            if (refusal.isPresent()) {
                return refusal;
            }
        }
        return element.eCrossReferences().stream()
                .filter(each -> !isInProject(each) && !EcoreUtil.isAncestor(added, each))
                .findFirst().map(each -> Refusal.of("elsewhere", ElementLabels.of(each)))
                .or(() -> CombinationRules.refusalToAdd(element, root()));
    }

    @Override
    protected final boolean changesAnything() {
        return true;
    }

    @Override
    protected final List<EObject> affected() {
        return List.of(added);
    }
}
