package org.coursewright.layout.ui.plan.tool;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;

import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.layout.ui.plan.paint.FeedbackPainting;
import org.coursewright.layout.ui.plan.paint.PlanPlace;
import org.coursewright.layout.ui.plan.part.Feedback;
import org.coursewright.layout.ui.plan.part.PlanState;
import org.coursewright.layout.ui.plan.part.StoreyPart;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.PlanVector;
import org.coursewright.measure.Length;
import org.coursewright.model.edit.command.ProjectCommand;
import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/**
 * Points at places of a plan, with the mouse or with the arrow keys, and does something with them. A click or Enter takes
 * the place; Esc gives up.
 */
public abstract class PlanTool extends AbstractTool {

    private static final int REACH = 8;

    private static final Map<Integer, int[]> ARROWS = Map.of(SWT.ARROW_LEFT, new int[]{-1, 0}, SWT.ARROW_RIGHT,
            new int[]{1, 0}, SWT.ARROW_UP, new int[]{0, 1}, SWT.ARROW_DOWN, new int[]{0, -1});

    private final Feedback feedback = new Feedback();
    private final GraphicalViewer viewer;
    private final BiConsumer<String, Boolean> say;
    private Optional<PlanPoint> pointed = Optional.empty();
    private boolean fine;

    /**
     * @param viewer of the plan
     * @param say told what to say, and whether it is a refusal
     */
    protected PlanTool(GraphicalViewer viewer, BiConsumer<String, Boolean> say) {
        this.viewer = viewer;
        this.say = say;
        setDefaultCursor(Cursors.CROSS);
        setUnloadWhenFinished(true);
    }

    /** @return where somebody begins to point with the keys */
    protected abstract PlanPoint beginning();

    /** Shows what would become of the place that is pointed at. */
    protected abstract void follow();

    /** Does something with the place that is pointed at. */
    protected abstract void take();

    /** Gives up what has been begun; tells whether there was something. */
    protected abstract boolean giveUp();

    /**
     * Is given a key that means nothing to other tools.
     *
     * @param event of the key
     * @return whether it means something here
     */
    protected abstract boolean typed(KeyEvent event);

    /** @return how far an arrow key goes */
    protected abstract Length step();

    /** @return the place that is pointed at, as it is */
    protected final Optional<PlanPoint> pointed() {
        return pointed;
    }

    /** @param point that is pointed at from now on */
    protected final void pointAt(PlanPoint point) {
        pointed = Optional.of(point);
    }

    /** @return the part of the storey that is shown, empty if there is none */
    protected final Optional<StoreyPart> storeyPart() {
        return viewer.getContents() instanceof StoreyPart part ? Optional.of(part) : Optional.empty();
    }

    /** @return what is shown */
    protected final PlanState state() {
        return storeyPart().orElseThrow().state();
    }

    /** @return the plan's viewer */
    protected final GraphicalViewer viewer() {
        return viewer;
    }

    /** @return where points of the plan are on paper */
    protected final PlanPlace place() {
        return state().place(DiagramScale.of(viewer));
    }

    /** @return how near something must be to be snapped to */
    protected final Length reach() {
        return DiagramScale.of(viewer).toLength(REACH);
    }

    /** @return the fine step while Shift is held, else none */
    protected final Optional<LengthStep> fine() {
        return fine ? Optional.of(LengthStep.of(state().format().unit())) : Optional.empty();
    }

    /** @param painting of what would be */
    protected final void show(FeedbackPainting painting) {
        feedback.show(viewer, painting);
    }

    /** @return what is shown of what would be */
    public final Optional<FeedbackPainting> feedback() {
        return feedback.shown();
    }

    /** Shows nothing any more. */
    protected final void erase() {
        feedback.erase();
    }

    /** @param words to be said in the header */
    protected final void say(String words) {
        say.accept(words, false);
    }

    /**
     * Makes an edit, or says why not.
     *
     * @param edit to be made
     * @return whether it was made
     */
    protected final boolean execute(ProjectCommand edit) {
        edit.refusal().ifPresent(refusal -> say.accept(refusal.reason(), true));
        if (edit.refusal().isPresent()) {
            return false;
        }
        getDomain().getCommandStack().execute(new EditCommand(edit));
        return true;
    }

    /** @param element to be selected, if it is shown */
    protected final void select(EObject element) {
        if (viewer.getEditPartRegistry().get(element) instanceof EditPart part) {
            viewer.select(part);
        }
    }

    /** Goes back to selecting. */
    protected final void finish() {
        handleFinished();
    }

    @Override
    public void deactivate() {
        feedback.erase();
        super.deactivate();
    }

    @Override
    protected boolean handleMove() {
        if (storeyPart().isPresent()) {
            Point pixel = getLocation().getCopy();
            storeyPart().get().getFigure().translateToRelative(pixel);
            fine = getCurrentInput().isShiftKeyDown();
            pointAt(place().point(pixel));
            follow();
        }
        return true;
    }

    @Override
    protected boolean handleButtonDown(int button) {
        return true;
    }

    @Override
    protected boolean handleButtonUp(int button) {
        if (button == 1 && storeyPart().isPresent()) {
            handleMove();
            take();
        } else if (button == 3) {
            stop();
        }
        return true;
    }

    private void stop() {
        erase();
        if (!giveUp()) {
            finish();
        }
    }

    @Override
    protected boolean handleKeyDown(KeyEvent event) {
        if (storeyPart().isEmpty()) {
            return super.handleKeyDown(event);
        }
        fine = (event.stateMask & SWT.SHIFT) != 0;
        if (event.character == SWT.ESC) {
            stop();
        } else if (event.character == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
            pointWithKeys();
            take();
        } else if (ARROWS.containsKey(event.keyCode)) {
            int[] arrow = ARROWS.get(event.keyCode);
            pointWithKeys();
            Length far = fine().map(LengthStep::step).orElseGet(this::step);
            pointAt(pointed.orElseThrow().plus(new PlanVector(far.times(arrow[0]), far.times(arrow[1]))));
            follow();
        } else if (!typed(event)) {
            return super.handleKeyDown(event);
        }
        return true;
    }

    private void pointWithKeys() {
        if (pointed.isEmpty()) {
            pointAt(beginning());
            follow();
        }
    }

    /** Tools here are no drags and carry no command of their own. */
    @Override
    protected String getCommandName() {
        return "";
    }

    @Override
    protected List<EditPart> createOperationSet() {
        return List.of();
    }
}
