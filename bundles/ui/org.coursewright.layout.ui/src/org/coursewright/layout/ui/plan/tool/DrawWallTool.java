package org.coursewright.layout.ui.plan.tool;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

import org.coursewright.layout.ui.plan.change.NewWall;
import org.coursewright.layout.ui.plan.paint.FeedbackPainting;
import org.coursewright.layout.ui.plan.part.LengthEntry;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.PlanVector;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.layout.ui.plan.shape.WallModule;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.layout.ui.plan.snap.SnapMark.Kind;
import org.coursewright.layout.ui.plan.snap.Snapped;
import org.coursewright.layout.ui.plan.snap.Snapping;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.AddWallCommand;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.widgets.Composite;

/**
 * Draws walls from click to click, each beginning where the last one ended, until one meets another wall. Lengths are from
 * outer face to outer face, as if an end in the open were to become a corner.
 */
public final class DrawWallTool extends PlanTool {

    private static final String STARTS_A_LENGTH = "0123456789.'\"";

    private Optional<Snapped> begin = Optional.empty();
    private Optional<Snapped> current = Optional.empty();

    /**
     * @param viewer of the plan
     * @param say told what to say, and whether it is a refusal
     */
    public DrawWallTool(GraphicalViewer viewer, BiConsumer<String, Boolean> say) {
        super(viewer, say);
    }

    @Override
    public void activate() {
        super.activate();
        say(ToolText.beginWall);
    }

    private NewWall newWall() {
        return new NewWall(state().project(), storeyPart().orElseThrow().element());
    }

    private WallModule module() {
        return newWall().module();
    }

    @Override
    protected Length step() {
        return module().step();
    }

    @Override
    protected PlanPoint beginning() {
        return begin.map(Snapped::point)
                .or(() -> state().shape().bounds().map(box -> box.southWest())).orElse(PlanPoint.ORIGIN);
    }

    @Override
    protected void follow() {
        StoreyShape storey = state().shape();
        Snapping snapping = Snapping.in(storey, List.of(), reach(), module(), fine());
        PlanPoint raw = pointed().orElseThrow();
        Snapped found = begin.map(from -> snapping.from(from.point(), raw, beyond(from).plus(module().half())))
                .orElseGet(() -> snapping.point(raw));
        current = Optional.of(found);
        show(new FeedbackPainting(outline(found.point()), found.marks(), words(found), found.point(), place(),
                state().ink()));
    }

    /** How far a wall goes beyond the end of its centre line: to the outer face of a corner, or short of a wall it meets. */
    private Length beyond(Snapped end) {
        boolean tee = end.marks().stream().anyMatch(mark -> mark.kind() == Kind.ON_WALL);
        return tee ? thickness(end.point()).negated() : module().half();
    }

    private Length thickness(PlanPoint point) {
        return state().shape().walls().values().stream().filter(wall -> wall.distance(point).units() < 100)
                .map(WallShape::module).map(WallModule::half).findFirst().orElse(Length.ZERO);
    }

    private List<List<PlanPoint>> outline(PlanPoint to) {
        if (begin.isEmpty() || begin.get().point().equals(to)) {
            return List.of();
        }
        PlanPoint from = begin.get().point();
        PlanVector half = Heading.of(from.to(to)).left().ahead(module().half());
        return List.of(List.of(from.plus(half), to.plus(half), to.plus(half.reversed()), from.plus(half.reversed())));
    }

    private String words(Snapped end) {
        if (begin.isEmpty() || begin.get().point().equals(end.point())) {
            return "";
        }
        PlanVector way = begin.get().point().to(end.point());
        Length length = way.length().plus(beyond(begin.get())).plus(beyond(end));
        return NLS.bind(ToolText.wallLength, state().format().format(length),
                Math.round(Heading.of(way).degrees() * 10) / 10.0);
    }

    @Override
    protected void take() {
        current.ifPresent(this::take);
    }

    private void take(Snapped point) {
        if (begin.isEmpty()) {
            begin = Optional.of(point);
            say(ToolText.endWall);
            follow();
        } else if (!begin.get().point().equals(point.point())) {
            add(begin.get().point(), point);
        }
    }

    private void add(PlanPoint from, Snapped to) {
        Wall wall = newWall().between(from, to.point());
        if (!execute(new AddWallCommand(storeyPart().orElseThrow().element(), wall))) {
            return;
        }
        select(wall);
        begin = to.meetsWall() ? Optional.empty() : Optional.of(to);
        current = Optional.empty();
        pointAt(to.point());
        erase();
        say(begin.isPresent() ? ToolText.endWall : ToolText.beginWall);
    }

    @Override
    protected boolean giveUp() {
        boolean begun = begin.isPresent();
        begin = Optional.empty();
        current = Optional.empty();
        say(ToolText.beginWall);
        return begun;
    }

    /** Opens the field for the length. */
    @Override
    protected boolean typed(KeyEvent event) {
        if (begin.isEmpty() || STARTS_A_LENGTH.indexOf(event.character) < 0 || event.character == 0) {
            return false;
        }
        Point at = place().pixel(current.map(Snapped::point).orElseGet(() -> begin.get().point()));
        storeyPart().orElseThrow().getFigure().translateToAbsolute(at);
        new LengthEntry((Composite) viewer().getControl(), state().format(), ToolText.typeLength, this::ahead)
                .open(at, String.valueOf(event.character));
        return true;
    }

    /** Ends the wall so far ahead in the direction in which it points at present. */
    private Optional<String> ahead(Length length) {
        PlanPoint from = begin.orElseThrow().point();
        Heading heading = current.map(Snapped::point).filter(point -> !point.equals(from))
                .map(point -> Heading.of(from.to(point))).orElse(Heading.EAST);
        Length centre = length.minus(beyond(begin.get())).minus(module().half());
        PlanPoint to = from.plus(heading.ahead(centre));
        Wall wall = newWall().between(from, to);
        var edit = new AddWallCommand(storeyPart().orElseThrow().element(), wall);
        if (centre.signum() <= 0 || edit.refusal().isPresent()) {
            return Optional.of(edit.refusal().map(refusal -> refusal.reason()).orElse(ToolText.typeLength));
        }
        boolean meets = state().shape().walls().values().stream().anyMatch(each -> each.distance(to).units() < 100);
        add(from, new Snapped(to,
                meets ? List.of(new org.coursewright.layout.ui.plan.snap.SnapMark(Kind.END, to, to)) : List.of()));
        return Optional.empty();
    }
}
