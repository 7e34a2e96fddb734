package org.coursewright.workbench.internal.history;

import org.eclipse.jface.preference.JFacePreferences;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;

/** The present state stands out, and what is taken back stands back. The words say so too, not the look alone. */
final class StepLabels extends ColumnLabelProvider {

    @Override
    public String getText(Object element) {
        Step step = (Step) element;
        String text = step.saved() ? NLS.bind(HistoryText.saved, step.label()) : step.label();
        return switch (step.place()) {
            case BEFORE -> text;
            case PRESENT -> NLS.bind(HistoryText.present, text);
            case TAKEN_BACK -> NLS.bind(HistoryText.takenBack, text);
        };
    }

    /** All of it, however narrow the view is. */
    @Override
    public String getToolTipText(Object element) {
        return getText(element);
    }

    @Override
    public Font getFont(Object element) {
        return ((Step) element).place() == Step.Place.PRESENT
                ? JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT)
                : null;
    }

    @Override
    public Color getForeground(Object element) {
        return ((Step) element).place() == Step.Place.TAKEN_BACK
                ? JFaceResources.getColorRegistry().get(JFacePreferences.QUALIFIER_COLOR)
                : null;
    }
}
