package org.coursewright.model.edit.command;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.coursewright.model.building.Junction;
import org.coursewright.model.building.JunctionEnd;
import org.coursewright.model.proposal.Proposal;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature.Setting;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Takes elements out of a project so that nothing refers to them any more: references are cleared, and what exists only
 * for the sake of the element goes with it, such as a proposal to change it or its end at a junction.
 */
final class Removal {

    private static final int FEWEST_ENDS = 2;

    private final EObject root;

    Removal(EObject root) {
        this.root = root;
    }

    void remove(EObject element) {
        Set<EObject> gone = new LinkedHashSet<>(List.of(element));
        element.eAllContents().forEachRemaining(gone::add);
        List<EObject> dependents = new ArrayList<>();
        EcoreUtil.UsageCrossReferencer.findAll(gone, root).forEach((target, usages) -> {
            for (Setting usage : List.copyOf(usages)) {
                clear(usage, target, gone, dependents);
            }
        });
        dependents.forEach(EcoreUtil::remove);
        removeSmallJunctions();
        EcoreUtil.remove(element);
    }

    private static void clear(Setting usage, EObject target, Set<EObject> gone, Collection<EObject> dependents) {
        EObject user = usage.getEObject();
        if (gone.contains(user)) {
            return;
        }
        if (user instanceof JunctionEnd || user instanceof Proposal) {
            dependents.add(user);
        } else {
            EcoreUtil.remove(usage, target);
        }
    }

    private void removeSmallJunctions() {
        List<EObject> small = new ArrayList<>();
        root.eAllContents().forEachRemaining(each -> {
            if (each instanceof Junction junction && junction.getEnds().size() < FEWEST_ENDS) {
                small.add(junction);
            }
        });
        small.forEach(EcoreUtil::remove);
    }
}
