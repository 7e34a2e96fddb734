package org.coursewright.model.edit.command;

import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.PropertyDescriptors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Gives one simple feature of any element another value, as a property sheet does. */
public final class SetFeatureCommand extends FeatureCommand {

    /**
     * @param owner of a project
     * @param feature of the owner: an attribute, or a reference to an element of the same project
     * @param value its new value, null for none, a collection for a feature of many values
     * @throws IllegalArgumentException if the owner has no such feature or holds other elements by it
     */
    public SetFeatureCommand(EObject owner, EStructuralFeature feature, Object value) {
        super(owner, ElementLabels.of(owner), PropertyDescriptors.labelOf(feature));
        set(feature, value);
    }
}
