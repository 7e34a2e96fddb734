package org.coursewright.layout.ui.editor;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;

import org.coursewright.bond.Effort;
import org.coursewright.core.bond.UnitCount;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Spinner;

/** Above a wall face: what the wall takes, and up to which course it is laid up. */
final class FaceHeader extends Composite {

    private static final int COLUMNS = 6;
    private static final int SLIDER_WIDTH = 140;

    private final Label counts;
    private final Scale slider;
    private final Spinner spinner;
    private final IntConsumer layUpTo;

    /**
     * @param parent of the header
     * @param layUpTo told up to which course the wall is to be laid up
     * @param unfold told whether walls round the corners are to be shown too
     * @param fit shows the whole wall
     * @param export asks for a file and writes a picture to it
     */
    FaceHeader(Composite parent, IntConsumer layUpTo, Consumer<Boolean> unfold, Runnable fit,
            Runnable export) {
        super(parent, SWT.NONE);
        this.layUpTo = layUpTo;
        GridLayoutFactory.fillDefaults().numColumns(COLUMNS).margins(8, 4).spacing(8, 2).applyTo(this);
        counts = new Label(this, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(COLUMNS, 1).applyTo(counts);
        new Label(this, SWT.NONE).setText(EditorText.layUpTo);
        slider = new Scale(this, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().hint(SLIDER_WIDTH, SWT.DEFAULT).applyTo(slider);
        spinner = new Spinner(this, SWT.BORDER);
        Button unfolded = new Button(this, SWT.CHECK);
        unfolded.setText(EditorText.unfold);
        unfolded.setToolTipText(EditorText.unfoldHint);
        unfolded.addListener(SWT.Selection, event -> unfold.accept(unfolded.getSelection()));
        button(EditorText.fit, fit);
        button(EditorText.export, export);
        AccessibleName.give(slider, EditorText.layUpTo);
        AccessibleName.give(spinner, EditorText.layUpTo);
        slider.addListener(SWT.Selection, event -> choose(slider.getSelection()));
        spinner.addListener(SWT.Selection, event -> choose(spinner.getSelection()));
    }

    private void button(String text, Runnable action) {
        Button button = new Button(this, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, event -> action.run());
    }

    private void choose(int course) {
        slider.setSelection(course);
        spinner.setSelection(course);
        layUpTo.accept(course);
    }

    /**
     * @param drawing of the wall, empty if there is none
     * @param upTo course that it is laid up to
     * @param stale whether the wall is being laid anew
     */
    void show(Optional<FaceDrawing> drawing, int upTo, boolean stale) {
        say(drawing.map(each -> counts(each) + (stale ? " " + EditorText.laying : "")).orElse(""));
        int courses = drawing.map(each -> each.courses().size()).orElse(0);
        slider.setEnabled(courses > 1);
        spinner.setEnabled(courses > 1);
        if (courses > 0) {
            slider.setMinimum(1);
            slider.setMaximum(Math.max(2, courses));
            slider.setSelection(upTo);
            spinner.setValues(upTo, 1, courses, 0, 1, 5);
        }
    }

    /** While an opening is dragged the words change all the time; the editor is only laid out anew if they need more lines. */
    private void say(String words) {
        if (words.equals(counts.getText())) {
            return;
        }
        counts.setText(words);
        int needed = counts.computeSize(Math.max(1, counts.getSize().x), SWT.DEFAULT).y;
        if (needed != counts.getSize().y) {
            counts.requestLayout();
        }
    }

    private static String counts(FaceDrawing drawing) {
        UnitCount count = drawing.count();
        String pieces = NLS.bind(EditorText.counts, new Object[]{drawing.layout().mark(), drawing.courses().size(),
                count.whole(), count.special(), count.cut(), drawing.layout().lapViolations(),
                drawing.layout().unfillable().size()});
        return pieces + standing(drawing);
    }

    private static String standing(FaceDrawing drawing) {
        if (drawing.layout().optimal()) {
            return EditorText.proven;
        }
        return drawing.effort() == Effort.QUICK
                ? EditorText.firstAnswer
                : NLS.bind(EditorText.improved, drawing.layout().lowerBound());
    }
}
