package org.coursewright.model.edit;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** How a project shows lengths. */
public final class DisplayFormat {

    private DisplayFormat() {
    }

    /**
     * @param element of a project
     * @return the format that its project asks for; millimetres if it is in none
     */
    public static LengthFormat of(EObject element) {
        if (EcoreUtil.getRootContainer(element) instanceof Project project) {
            DisplayUnit unit = project.getDisplayUnit();
            int denominator = project.getInchDenominator();
            return ValueRule.INCH_DENOMINATOR.accepts(denominator)
                    ? new LengthFormat(unit, denominator)
                    : LengthFormat.of(unit);
        }
        return LengthFormat.MILLIMETRES;
    }
}
