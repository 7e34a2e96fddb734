package org.coursewright.layout.ui.editor;

import java.util.Optional;

import org.coursewright.bond.Effort;
import org.coursewright.core.bond.UnitCount;
import org.coursewright.diagram.ui.editor.HeaderRow;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Spinner;

/** Above a wall face: what the wall takes, and up to which course it is laid up. */
final class FaceHeader extends Composite {

    private static final int SLIDER_WIDTH = 140;

    private final ChangingWords counts;
    private final Scale slider;
    private final Spinner spinner;
    private final Wishes wishes;
    private Choice choice = new Choice(-1, 0);

    /** Up to which of so many courses the wall is laid up. */
    private record Choice(int courses, int upTo) {
    }

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
        GridLayoutFactory.fillDefaults().margins(8, 4).spacing(8, 2).applyTo(this);
        counts = new ChangingWords(this);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(counts);
        HeaderRow row = new HeaderRow(this);
        new Label(row, SWT.NONE).setText(EditorText.layUpTo);
        slider = new Scale(row, SWT.HORIZONTAL);
        slider.setLayoutData(new RowData(SLIDER_WIDTH, SWT.DEFAULT));
        spinner = new Spinner(row, SWT.BORDER);
        row.check(EditorText.unfold, wishes::unfold).setToolTipText(EditorText.unfoldHint);
        row.check(EditorText.gauges, wishes::gauges).setToolTipText(EditorText.gaugesHint);
        row.push(EditorText.fit, wishes::fit);
        row.push(EditorText.export, wishes::export);
        addListener(SWT.Resize, event -> getDisplay().asyncExec(this::takeLines));
        AccessibleName.give(slider, EditorText.layUpTo);
        AccessibleName.give(spinner, EditorText.layUpTo);
        slider.addListener(SWT.Selection, event -> choose(slider.getSelection()));
        spinner.addListener(SWT.Selection, event -> choose(spinner.getSelection()));
    }

    private void choose(int course) {
        choice = new Choice(choice.courses(), course);
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
        counts.say(drawing.map(each -> counts(each) + (stale ? " " + EditorText.laying : "")).orElse(""));
        Choice now = new Choice(drawing.map(each -> each.courses().size()).orElse(0), upTo);
        if (!now.equals(choice)) {
            choice = now;
            offer(now);
        }
    }

    private void offer(Choice offered) {
        slider.setEnabled(offered.courses() > 1);
        spinner.setEnabled(offered.courses() > 1);
        if (offered.courses() > 0) {
            slider.setMinimum(1);
            slider.setMaximum(Math.max(2, offered.courses()));
            slider.setSelection(offered.upTo());
            spinner.setValues(offered.upTo(), 1, offered.courses(), 0, 1, 5);
        }
    }

    /** Narrower, words and buttons may need more lines than before. */
    private void takeLines() {
        if (!isDisposed() && computeSize(getSize().x, SWT.DEFAULT).y != getSize().y) {
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
