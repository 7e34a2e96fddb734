package org.coursewright.model.edit.command;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectPackage;

/** Chooses how lengths are shown and what a bare number means; no length changes. */
public final class SetDisplayUnitCommand extends FeatureCommand {

    /**
     * @param project whose lengths are shown
     * @param unit in which they are shown
     * @param inchDenominator finest fraction of an inch shown: 8 or 16
     */
    public SetDisplayUnitCommand(Project project, DisplayUnit unit, int inchDenominator) {
        super(project, ElementLabels.of(unit));
        set(ProjectPackage.Literals.PROJECT__DISPLAY_UNIT, unit);
        set(ProjectPackage.Literals.PROJECT__INCH_DENOMINATOR, inchDenominator);
    }
}
