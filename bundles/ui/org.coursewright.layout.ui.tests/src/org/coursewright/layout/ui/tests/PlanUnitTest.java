package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.paint.DimensionPainting;
import org.coursewright.layout.ui.plan.part.DimensionPart;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.model.edit.command.SetDisplayUnitCommand;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The plan of the demo building once lengths are shown in millimetres. */
class PlanUnitTest extends OnDemoPlan {

    private DiagramScale before;

    @BeforeEach
    void showMillimetres() {
        before = DiagramScale.of(plan.viewer());
        history().execute(
                new EditCommand(new SetDisplayUnitCommand(OpenPlan.project(), DisplayUnit.MILLIMETRE, 16)));
        OpenPlan.settle();
    }

    private DimensionPart pierBeforeTheFirstWindow() {
        return plan.dimensions().stream()
                .filter(part -> part.dimension().orElseThrow().kind() == Dimension.Kind.TO_JAMB
                        && part.dimension().orElseThrow().opening().filter(plan.opening("N1")::equals).isPresent())
                .findFirst().orElseThrow();
    }

    private void type(String length) {
        pierBeforeTheFirstWindow().performRequest(new Request(RequestConstants.REQ_OPEN));
        Text entry = children((Composite) plan.viewer().getControl(), Text.class).findFirst().orElseThrow();
        entry.setText(length);
        entry.notifyListeners(SWT.DefaultSelection, new Event());
        OpenPlan.settle();
    }

    private static <T> Stream<T> children(Composite parent, Class<T> kind) {
        return Stream.of(parent.getChildren()).flatMap(child -> Stream.concat(
                Stream.of(child).filter(kind::isInstance).map(kind::cast),
                child instanceof Composite inner ? children(inner, kind) : Stream.empty()));
    }

    @Test
    void stringsAreWrittenAsFiguresAndReadWithTheirUnit() {
        assertEquals("1644.7", pierBeforeTheFirstWindow().painting().map(DimensionPainting::text).orElseThrow());
        assertEquals("1644.7 mm to the near jamb of Window N1 along Wall W1", pierBeforeTheFirstWindow().words());
    }

    @Test
    void planIsFittedAnewSoThatNoStringIsCutOff() {
        DiagramScale now = DiagramScale.of(plan.viewer());
        plan.key(SWT.HOME, (char) 0, 0);
        assertEquals(DiagramScale.of(plan.viewer()), now);

        org.eclipse.swt.graphics.Rectangle area = ((Composite) plan.viewer().getControl()).getClientArea();
        Rectangle seen = new Rectangle(area.x, area.y, area.width, area.height);
        for (DimensionPart part : plan.dimensions()) {
            Rectangle box = part.getFigure().getBounds().getCopy();
            part.getFigure().translateToAbsolute(box);
            assertTrue(seen.contains(box), () -> part.words() + " is cut off");
        }
    }

    @Test
    void scaleThatSomebodyChoseIsKept() {
        DiagramScale.zoom(plan.viewer()).setZoom(before.zoom() * 2);
        double chosen = DiagramScale.zoom(plan.viewer()).getZoom();
        history().undo();
        OpenPlan.settle();

        assertEquals(chosen, DiagramScale.zoom(plan.viewer()).getZoom());
    }

    @Test
    void plainFiguresAreMillimetres() {
        type("1700");

        assertEquals(Length.ofMillimetres(1700), plan.opening("N1").getOffset());
    }

    @Test
    void lengthThatTakesAnOpeningOutOfItsWallIsAnsweredUnderTheField() {
        Length offset = plan.opening("N1").getOffset();

        type("30000");

        assertEquals(offset, plan.opening("N1").getOffset());
        List<String> answers = children((Composite) plan.viewer().getControl(), Label.class).map(Label::getText)
                .toList();
        assertEquals(List.of("Window N1 would reach from 30000 mm to 31117.6 mm, but Wall W1 ends at 12141.2 mm."
                + " Type a length that keeps it in its wall."), answers);
    }
}
