package org.coursewright.model.edit.command;

import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.PropertyDescriptors;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Changes one property of a unit of the catalogue, for all walls that are laid of it. */
public final class EditUnitTypeCommand extends FeatureCommand {

    /**
     * @param unitType of a project
     * @param feature an attribute of unit types
     * @param value its new value, null for none, a collection for the special lengths
     * @throws IllegalArgumentException if unit types have no such attribute
     */
    public EditUnitTypeCommand(UnitType unitType, EStructuralFeature feature, Object value) {
        super(unitType, ElementLabels.of(unitType), PropertyDescriptors.labelOf(feature));
        set(feature, value);
    }
}
