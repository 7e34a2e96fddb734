package org.coursewright.layout.ui.plan.part;

import java.util.Optional;

import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.change.OpeningShift.Jambs;
import org.coursewright.layout.ui.plan.change.TypedLength;
import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.dimension.Figures;
import org.coursewright.layout.ui.plan.paint.DimensionPainting;
import org.coursewright.layout.ui.plan.paint.DimensionRow;
import org.coursewright.layout.ui.plan.paint.PaintedFigure;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Refusal;
import org.coursewright.model.edit.command.ProjectCommand;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Label;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.eclipse.gef.tools.SelectEditPartTracker;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Composite;

/** A dimension string; no element of the project, but what is typed into it changes elements. */
public final class DimensionPart extends AbstractGraphicalEditPart {

    private final DimensionKey key;

    /** @param key of the dimension to be shown */
    public DimensionPart(DimensionKey key) {
        this.key = key;
        setModel(key);
    }

    private PlanState state() {
        return ((StoreyPart) getParent()).state();
    }

    /** @return the dimension as it is now, empty if it has just gone */
    public Optional<Dimension> dimension() {
        return Optional.ofNullable(state().dimensions().get(key));
    }

    /** @return how it is drawn */
    public Optional<DimensionPainting> painting() {
        Wording wording = ((StoreyPart) getParent()).wording();
        return dimension().map(shown -> new DimensionPainting(shown, new Figures(state().format()).of(shown),
                wording.rows().getOrDefault(shown, DimensionRow.FIRST), state().place(DiagramScale.of(getViewer())),
                state().ink(), wording.words(), getSelected() != SELECTED_NONE));
    }

    @Override
    protected IFigure createFigure() {
        return new PaintedFigure();
    }

    @Override
    protected void createEditPolicies() {
        // other lengths are typed into it, not dragged
    }

    @Override
    protected void refreshVisuals() {
        PaintedFigure painted = (PaintedFigure) getFigure();
        painted.show(painting());
        painted.setToolTip(new Label(words()));
        ((StoreyPart) getParent()).setLayoutConstraint(this, painted, painted.getBounds().getCopy());
    }

    /** @return what is measured, and how long it is */
    public String words() {
        return dimension()
                .map(shown -> NLS.bind(PlanPartText.of(shown.kind()),
                        new Object[]{state().format().format(shown.length()),
                                ElementLabels.of(key.wall()), key.opening().map(ElementLabels::of).orElse("")}))
                .orElse("");
    }

    @Override
    public void setSelected(int value) {
        super.setSelected(value);
        if (getParent() != null) {
            refreshVisuals();
        }
    }

    /** Lets another length be typed: on a double-click, a click on what is selected, or F2. */
    @Override
    public void performRequest(Request request) {
        boolean typed = RequestConstants.REQ_OPEN.equals(request.getType())
                || RequestConstants.REQ_DIRECT_EDIT.equals(request.getType());
        if (typed) {
            dimension().ifPresent(this::type);
        } else {
            super.performRequest(request);
        }
    }

    private void type(Dimension shown) {
        Rectangle at = painting().map(DimensionPainting::textPlace).orElseGet(Rectangle::new);
        getFigure().translateToAbsolute(at);
        new LengthEntry((Composite) getViewer().getControl(), state().format(), words(),
                length -> edit(shown, length)).open(at.getLocation(), state().format().formatExact(shown.length()));
    }

    private Optional<String> edit(Dimension shown, Length length) {
        TypedLength typed = new TypedLength(state().shape());
        Optional<ProjectCommand> edit = typed.edit(shown, length);
        Optional<String> refusal = edit.flatMap(ProjectCommand::refusal).map(Refusal::reason)
                .or(() -> typed.beyondTheWall(shown, length).map(this::beyond));
        if (refusal.isEmpty()) {
            edit.ifPresent(each -> getViewer().getEditDomain().getCommandStack().execute(new EditCommand(each)));
        }
        return refusal;
    }

    private String beyond(Jambs jambs) {
        LengthFormat format = state().format();
        return NLS.bind(PlanPartText.beyondTheWall,
                new Object[]{ElementLabels.of(key.opening().orElseThrow()), format.format(jambs.offset()),
                        format.format(jambs.end()), ElementLabels.of(key.wall()),
                        state().shape().wall(key.wall()).map(wall -> format.format(wall.length())).orElse("")});
    }

    /** A dimension can be selected and not be dragged. */
    @Override
    public DragTracker getDragTracker(Request request) {
        return new SelectEditPartTracker(this);
    }

    @Override
    protected AccessibleEditPart getAccessibleEditPart() {
        return new AccessibleGraphicalEditPart() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = words();
            }
        };
    }
}
