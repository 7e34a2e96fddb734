package org.coursewright.model.edit;

import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * How one property of an element is shown and edited, whatever shows it.
 *
 * @param feature of the model that holds it
 * @param group heading under which it is listed
 * @param label its name for people
 * @param kind what its values are
 * @param unit what its numbers count, such as "kg", empty if the value says so itself
 * @param help what it means, a sentence or two
 * @param editable whether it can be typed or chosen
 */
public record PropertyDescriptor(EStructuralFeature feature, String group, String label, ValueKind kind, String unit,
        String help, boolean editable) {
}
