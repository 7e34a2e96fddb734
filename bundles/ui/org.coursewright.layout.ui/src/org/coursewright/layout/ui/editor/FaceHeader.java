package org.coursewright.layout.ui.editor;

import java.util.Optional;
import java.util.function.Consumer;

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

    private static final int COLUMNS = 7;
    private static final int SLIDER_WIDTH = 140;

    private final Label counts;
    private final Scale slider;
    private final Spinner spinner;
    private final Wishes wishes;

    /** What can be asked for. */
    interface Wishes {

        /** @param course up to which the wall is to be laid up */
        void layUpTo(int course);

        /** @param shown whether walls round the corners are to be shown too */
        void unfold(boolean shown);

        /** @param written whether the joint gauge of each run is to be written over it */
        void gauges(boolean written);

        /** Show the whole wall. */
        void fit();

        /** Ask for a file and write a picture to it. */
        void export();
    }

    /**
     * @param parent of the header
     * @param wishes told what is asked for
     */
    FaceHeader(Composite parent, Wishes wishes) {
        super(parent, SWT.NONE);
        this.wishes = wishes;
        GridLayoutFactory.fillDefaults().numColumns(COLUMNS).margins(8, 4).spacing(8, 2).applyTo(this);
        counts = new Label(this, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(COLUMNS, 1).applyTo(counts);
        new Label(this, SWT.NONE).setText(EditorText.layUpTo);
        slider = new Scale(this, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().hint(SLIDER_WIDTH, SWT.DEFAULT).applyTo(slider);
        spinner = new Spinner(this, SWT.BORDER);
        check(EditorText.unfold, EditorText.unfoldHint, wishes::unfold);
        check(EditorText.gauges, EditorText.gaugesHint, wishes::gauges);
        button(EditorText.fit, wishes::fit);
        button(EditorText.export, wishes::export);
        AccessibleName.give(slider, EditorText.layUpTo);
        AccessibleName.give(spinner, EditorText.layUpTo);
        slider.addListener(SWT.Selection, event -> choose(slider.getSelection()));
        spinner.addListener(SWT.Selection, event -> choose(spinner.getSelection()));
    }

    private void check(String text, String hint, Consumer<Boolean> wish) {
        Button button = new Button(this, SWT.CHECK);
        button.setText(text);
        button.setToolTipText(hint);
        button.addListener(SWT.Selection, event -> wish.accept(button.getSelection()));
    }

    private void button(String text, Runnable action) {
        Button button = new Button(this, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, event -> action.run());
    }

    private void choose(int course) {
        slider.setSelection(course);
        spinner.setSelection(course);
        wishes.layUpTo(course);
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
