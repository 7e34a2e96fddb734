package org.coursewright.core.display;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.project.Project;

/** How a project writes lengths. */
public final class ProjectFormat {

    private static final int FINEST_FRACTION = 64;

    private ProjectFormat() {
    }

    /**
     * The length format that a project asks for.
     *
     * @param project the project, not null
     * @return its display unit and inch fraction; sixteenths if the stored fraction is none that people use
     */
    public static LengthFormat of(Project project) {
        DisplayUnit unit = project.getDisplayUnit() == null ? DisplayUnit.INCH : project.getDisplayUnit();
        int denominator = project.getInchDenominator();
        boolean usable = denominator >= 2 && denominator <= FINEST_FRACTION && Integer.bitCount(denominator) == 1;
        return new LengthFormat(unit, usable ? denominator : LengthFormat.INCHES.inchDenominator());
    }
}
