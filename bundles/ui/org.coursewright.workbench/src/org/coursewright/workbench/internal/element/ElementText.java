package org.coursewright.workbench.internal.element;

import org.coursewright.model.project.Marked;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.EObject;

/** The text of each element. */
public final class ElementText {

    private ElementText() {
    }

    /**
     * @param element part of a model
     * @return its mark, its name, or what kind of thing it is
     */
    public static String of(EObject element) {
        if (element instanceof Project project) {
            return project.getName();
        }
        return element instanceof Marked marked && marked.getMark() != null
                ? marked.getMark()
                : element.eClass().getName();
    }
}
