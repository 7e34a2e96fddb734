package org.coursewright.workbench.internal.element;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.project.Marked;
import org.coursewright.model.project.ProjectPackage;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.command.DeleteCommand;
import org.eclipse.emf.edit.command.SetCommand;

/** The edits that every view offers. */
public final class ElementEdits {
    private ElementEdits() {
    }

    /** @return the command that gives an element another mark */
    public static Command rename(ProjectSession session, Marked element, String mark) {
        return SetCommand.create(session.editingDomain(), element, ProjectPackage.Literals.MARKED__MARK, mark);
    }

    /** @return the command that deletes an element and what refers to it */
    public static Command delete(ProjectSession session, EObject element) {
        return DeleteCommand.create(session.editingDomain(), element);
    }
}
