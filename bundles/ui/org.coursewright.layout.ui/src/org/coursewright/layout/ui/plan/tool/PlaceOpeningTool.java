package org.coursewright.layout.ui.plan.tool;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

import org.coursewright.layout.ui.plan.change.NewOpening;
import org.coursewright.layout.ui.plan.change.OpeningShift;
import org.coursewright.layout.ui.plan.paint.FeedbackPainting;
import org.coursewright.layout.ui.plan.part.PlanWallPart;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.OpeningKind;
import org.coursewright.model.edit.command.AddOpeningCommand;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.events.KeyEvent;

/** Places an opening in the wall that is pointed at, then goes back to selecting. */
public final class PlaceOpeningTool extends PlanTool {

    private final OpeningKind kind;
    private Optional<Placing> current = Optional.empty();

    private record Placing(WallShape wall, Opening opening) {
    }

    /**
     * @param viewer of the plan
     * @param kind of the opening
     * @param say told what to say, and whether it is a refusal
     */
    public PlaceOpeningTool(GraphicalViewer viewer, OpeningKind kind, BiConsumer<String, Boolean> say) {
        super(viewer, say);
        this.kind = kind;
    }

    @Override
    public void activate() {
        super.activate();
        say(ToolText.placeOpening);
    }

    /** The middle of the wall that is selected, or of the first one. */
    @Override
    protected PlanPoint beginning() {
        for (Object part : viewer().getSelectedEditParts()) {
            if (part instanceof PlanWallPart wall && wall.shape().isPresent()) {
                return wall.shape().get().middle();
            }
        }
        return state().shape().walls().values().stream().findFirst().map(WallShape::middle).orElse(PlanPoint.ORIGIN);
    }

    @Override
    protected Length step() {
        return current.map(placing -> placing.wall().module().step()).orElseGet(() -> Length.ofMillimetres(200));
    }

    @Override
    protected void follow() {
        PlanPoint raw = pointed().orElseThrow();
        current = state().shape().walls().values().stream()
                .filter(wall -> !wall.distance(raw).isGreaterThan(wall.module().half().plus(reach())))
                .min(Comparator.comparing(wall -> wall.distance(raw))).map(wall -> placing(wall, raw));
        current.ifPresentOrElse(this::show, this::erase);
    }

    private Placing placing(WallShape wall, PlanPoint raw) {
        Length middle = wall.offset(raw);
        Opening opening = new NewOpening(state().project(), kind).in(wall);
        Length near = middle.minus(Length.ofUnits(opening.getWidth().units() / 2));
        opening.setOffset(new OpeningShift(wall, new OpeningShift.Jambs(Length.ZERO, opening.getWidth()), fine())
                .moved(near).offset());
        return new Placing(wall, opening);
    }

    private void show(Placing placing) {
        WallShape wall = placing.wall();
        Opening opening = placing.opening();
        Length end = opening.getOffset().plus(opening.getWidth());
        String words = List.of(opening.getOffset(), opening.getWidth(), wall.length().minus(end)).stream()
                .map(state().format()::format).reduce((a, b) -> a + " | " + b).orElseThrow();
        show(new FeedbackPainting(List.of(wall.part(opening.getOffset(), opening.getWidth())), List.of(), words,
                wall.at(end, Length.ZERO), place(), state().ink()));
    }

    @Override
    protected void take() {
        if (current.isEmpty()) {
            say(ToolText.noWallHere);
            return;
        }
        Placing placing = current.get();
        if (execute(new AddOpeningCommand(placing.wall().wall(), placing.opening()))) {
            finish();
            select(placing.opening());
        }
    }

    @Override
    protected boolean typed(KeyEvent event) {
        return false;
    }

    @Override
    protected boolean giveUp() {
        return false;
    }
}
