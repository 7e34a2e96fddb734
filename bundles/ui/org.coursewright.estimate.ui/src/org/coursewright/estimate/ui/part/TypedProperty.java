package org.coursewright.estimate.ui.part;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

import org.coursewright.model.edit.DisplayFormat;
import org.coursewright.model.edit.PropertyDescriptor;
import org.coursewright.model.edit.PropertyDescriptors;
import org.coursewright.model.edit.PropertyText;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.edit.command.SetFeatureCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * One property of one element of the project as text that can be typed over, in the project's units.
 *
 * @param element that has it
 * @param feature that holds it
 * @param execute makes an edit, and says why not if it cannot be made
 */
public record TypedProperty(EObject element, EStructuralFeature feature,
        Function<ProjectCommand, Optional<String>> execute) implements TypedValue {

    @Override
    public String text() {
        return words().edited(element.eGet(feature));
    }

    @Override
    public Optional<String> set(String typed) {
        try {
            Object value = words().parse(property(), element, typed);
            return Objects.equals(value, element.eGet(feature))
                    ? Optional.empty()
                    : execute.apply(new SetFeatureCommand(element, feature, value));
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
    }

    private PropertyDescriptor property() {
        return PropertyDescriptors.of(feature);
    }

    private PropertyText words() {
        return new PropertyText(DisplayFormat.of(element));
    }
}
