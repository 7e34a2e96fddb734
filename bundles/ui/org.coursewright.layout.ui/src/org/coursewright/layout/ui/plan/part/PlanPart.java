package org.coursewright.layout.ui.plan.part;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.coursewright.core.finding.Finding;
import org.coursewright.diagram.ui.part.ElementPart;
import org.coursewright.layout.ui.plan.paint.PaintedFigure;
import org.coursewright.layout.ui.plan.paint.Painting;
import org.coursewright.layout.ui.plan.paint.PlanPlace;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Storey;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Label;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPolicy;
import org.eclipse.gef.Request;
import org.eclipse.swt.accessibility.AccessibleEvent;

/**
 * Something in a plan that is an element of the project.
 *
 * @param <E> type of the element
 */
public abstract class PlanPart<E extends EObject> extends ElementPart<E> {

    /** @param element to be shown */
    protected PlanPart(E element) {
        super(element);
    }

    /** @return what else the editor shows */
    public final PlanState state() {
        return ((StoreyPart) getParent()).state();
    }

    /** @return where the words of the plan are */
    protected final Wording wording() {
        return ((StoreyPart) getParent()).wording();
    }

    /** @return the storey that is shown */
    protected final Storey storey() {
        return ((StoreyPart) getParent()).element();
    }

    /** @return where points of the plan are on paper */
    public final PlanPlace place() {
        return state().place(scale());
    }

    /** @return how it is drawn, empty if it cannot be */
    protected abstract Optional<? extends Painting> painting();

    /** @return what it is called and how large it is, in one line */
    public abstract String words();

    /** @return what is wrong or doubtful about it */
    protected abstract List<Finding> findings();

    @Override
    protected IFigure createFigure() {
        return new PaintedFigure();
    }

    @Override
    protected void refreshVisuals() {
        PaintedFigure painted = (PaintedFigure) getFigure();
        painted.show(painting());
        painted.setToolTip(new Label(hint()));
        ((StoreyPart) getParent()).setLayoutConstraint(this, painted, painted.getBounds().getCopy());
        if (getEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE) instanceof GripPolicy grips) {
            grips.relocate();
        }
    }

    @Override
    public DragTracker getDragTracker(Request request) {
        return new PlanDragTracker(this);
    }

    private String hint() {
        String found = findings().stream().map(Finding::message).distinct().map(text -> "\n" + text)
                .collect(Collectors.joining());
        return words() + found;
    }

    @Override
    public void setSelected(int value) {
        super.setSelected(value);
        if (getParent() != null) {
            refreshVisuals();
        }
    }

    /** @return whether it is among what is selected */
    protected final boolean isChosen() {
        return getSelected() != SELECTED_NONE;
    }

    /** @return a length as the project writes it */
    protected final String format(Length length) {
        return state().format().format(length);
    }

    @Override
    protected AccessibleEditPart getAccessibleEditPart() {
        return new AccessibleGraphicalEditPart() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = hint();
            }
        };
    }
}
