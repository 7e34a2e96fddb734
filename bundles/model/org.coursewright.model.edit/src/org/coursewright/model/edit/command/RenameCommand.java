package org.coursewright.model.edit.command;

import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.project.Marked;
import org.coursewright.model.project.ProjectPackage;

/** Gives a marked element another mark, which no other of its kind bears. */
public final class RenameCommand extends FeatureCommand {

    /**
     * @param element of a project
     * @param mark its new mark; spaces at its ends are left out
     */
    public RenameCommand(Marked element, String mark) {
        super(element, ElementLabels.of(element), mark.strip());
        set(ProjectPackage.Literals.MARKED__MARK, mark.strip());
    }
}
