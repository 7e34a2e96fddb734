package org.coursewright.layout.ui.plan.editor;

import java.util.function.Supplier;

import org.coursewright.layout.ui.plan.part.PlanState;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** The plan with a ruler along its top and its left. */
final class PlanPaper extends Composite {

    private final Composite middle;
    private Ruler top;
    private Ruler left;

    PlanPaper(Composite parent) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 0).applyTo(this);
        middle = new Composite(this, SWT.NONE);
        middle.setLayout(new FillLayout());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(middle);
    }

    /** Where the plan goes. */
    Composite middle() {
        return middle;
    }

    /** Adds the rulers once the plan is there. */
    void addRulers(GraphicalViewer viewer, Supplier<PlanState> state) {
        Control corner = new Label(this, SWT.NONE);
        GridDataFactory.fillDefaults().hint(Ruler.BREADTH, Ruler.BREADTH).applyTo(corner);
        top = new Ruler(this, true, viewer, state);
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, Ruler.BREADTH).applyTo(top);
        left = new Ruler(this, false, viewer, state);
        GridDataFactory.fillDefaults().grab(false, true).hint(Ruler.BREADTH, SWT.DEFAULT).applyTo(left);
        corner.moveAbove(middle);
        top.moveAbove(middle);
        left.moveAbove(middle);
        layout();
    }

    void redrawRulers() {
        if (top != null && !top.isDisposed()) {
            top.redraw();
            left.redraw();
        }
    }
}
