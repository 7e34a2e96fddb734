package org.coursewright.workbench.internal.properties;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.edit.DisplayFormat;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.PropertyDescriptor;
import org.coursewright.model.edit.PropertyDescriptors;
import org.coursewright.model.edit.PropertyText;
import org.coursewright.model.edit.Refusal;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.workbench.internal.element.ElementEdits;
import org.eclipse.emf.ecore.EObject;

/**
 * One element as its form reads and edits it: everything is text here, in the units of the project.
 *
 * @param session of the element's project
 * @param element whose properties are shown
 */
record ElementEditing(ProjectSession session, EObject element) {

    List<PropertyDescriptor> properties() {
        return PropertyDescriptors.of(element.eClass());
    }

    /** The exact value, so that confirming what stands in a field changes nothing. */
    String text(PropertyDescriptor property) {
        return words().edited(value(property));
    }

    /** What can be chosen; for a property that may be left open, the first choice is empty. */
    List<String> choices(PropertyDescriptor property) {
        return switch (property.kind()) {
            case CHOICE -> PropertyText.choices(property).stream().map(words()::edited).toList();
            case ELEMENT -> Stream.concat(Stream.of(""),
                    PropertyText.candidates(property, element).stream().map(ElementLabels::of)).toList();
            case YES_NO -> List.of(words().edited(Boolean.TRUE), words().edited(Boolean.FALSE));
            default -> List.of();
        };
    }

    /**
     * Gives a property the value that somebody typed or chose.
     *
     * @return why not, in which case nothing has changed; empty if it has that value now
     */
    Optional<String> set(PropertyDescriptor property, String typed) {
        try {
            Object value = words().parse(property, element, typed);
            return Objects.equals(value, value(property)) ? Optional.empty() : execute(property, value);
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
    }

    private Optional<String> execute(PropertyDescriptor property, Object value) {
        ProjectCommand command = ElementEdits.set(element, property.feature(), value);
        Optional<String> refusal = command.refusal().map(Refusal::reason);
        if (refusal.isEmpty()) {
            session.execute(command);
        }
        return refusal;
    }

    private Object value(PropertyDescriptor property) {
        return element.eGet(property.feature());
    }

    private PropertyText words() {
        return new PropertyText(DisplayFormat.of(element));
    }
}
