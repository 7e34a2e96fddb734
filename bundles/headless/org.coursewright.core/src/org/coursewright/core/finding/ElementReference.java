package org.coursewright.core.finding;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xmi.XMLResource;

/**
 * Leads from a finding back to the element that it is about. A value: it may outlive the element, be kept by derived
 * results and be handed between threads.
 *
 * @param name the element as people name it, such as {@code wall W3} or {@code opening D1 in wall W3}; for texts only
 * @param id the element's id in the project file, which stays whatever becomes of its mark; empty for an element that is
 *        in no file yet
 */
public record ElementReference(String name, Optional<String> id) {

    public ElementReference {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(id, "id");
    }

    /**
     * Refers to an element.
     *
     * @param element part of a project, read on the model's thread
     * @param name as people name it
     * @return the reference
     */
    public static ElementReference of(EObject element, String name) {
        return new ElementReference(name, element.eResource() instanceof XMLResource resource
                ? Optional.ofNullable(resource.getID(element))
                : Optional.empty());
    }

    /** @return a reference to a part of the same element that has no id, such as {@code course 7} of a wall */
    public ElementReference at(String part) {
        return new ElementReference(name + ", " + part, id);
    }

    /**
     * Finds the element again.
     *
     * @param project where it was found
     * @return the element, empty if it has been taken out or never had an id
     */
    public Optional<EObject> in(Project project) {
        return Optional.ofNullable(project.eResource()).flatMap(resource -> id.map(resource::getEObject));
    }
}
