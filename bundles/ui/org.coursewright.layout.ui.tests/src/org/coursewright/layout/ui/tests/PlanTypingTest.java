package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.part.DimensionPart;
import org.coursewright.measure.Length;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.keys.IBindingService;
import org.junit.jupiter.api.Test;

/** Lengths are typed into the dimensions of a plan. */
class PlanTypingTest extends OnDemoPlan {

    @Test
    void typedOverallLengthMovesTheEndWall() {
        DimensionPart overall = dimension("W1", Dimension.Kind.OVERALL);
        overall.performRequest(new Request(RequestConstants.REQ_OPEN));
        Text entry = entry();
        assertEquals("39'-10\"", entry.getText());
        entry.setText("41'");
        entry.notifyListeners(SWT.DefaultSelection, new Event());
        OpenPlan.settle();

        assertEquals(Length.ofInches(492), plan.part(plan.wall("W1")).shape().orElseThrow().length());
        assertEquals(plan.wall("W1").getToX(), plan.wall("W2").getFromX());
        assertEquals(plan.wall("W2").getFromX(), plan.wall("P5").getToX());
        assertEquals("Stretch Wall W1", history().getUndoCommand().getLabel());
        assertTrue(entry.isDisposed());
    }

    @Test
    void typedNonsenseAndRefusedLengthsAreAnswered() {
        DimensionPart pier = dimension("W1", Dimension.Kind.TO_JAMB);
        pier.performRequest(new Request(RequestConstants.REQ_DIRECT_EDIT));
        Text entry = entry();
        entry.setText("a lot");
        entry.notifyListeners(SWT.DefaultSelection, new Event());
        assertTrue(refusal(entry).contains("a lot"));

        entry.setText("-2'");
        entry.notifyListeners(SWT.DefaultSelection, new Event());
        assertTrue(refusal(entry).contains("Window N1"), () -> refusal(entry));
        assertFalse(history().isDirty());
    }

    /** Delete and Ctrl+A are for the text while a length is typed, and for the plan afterwards. */
    @Test
    void windowLeavesKeysToTheFieldWhileALengthIsTyped() {
        IBindingService keys = PlatformUI.getWorkbench().getService(IBindingService.class);
        dimension("W1", Dimension.Kind.OVERALL).performRequest(new Request(RequestConstants.REQ_OPEN));
        Text entry = entry();
        entry.forceFocus();
        OpenPlan.settle();
        assertFalse(keys.isKeyFilterEnabled());

        entry.notifyListeners(SWT.FocusOut, new Event());
        OpenPlan.settle();
        assertTrue(keys.isKeyFilterEnabled());
    }

    private static String refusal(Text entry) {
        return ((Label) entry.getParent().getChildren()[1]).getText();
    }

    private Text entry() {
        for (Control child : ((Composite) plan.viewer().getControl()).getChildren()) {
            if (child instanceof Composite box && box.getChildren().length > 0
                    && box.getChildren()[0] instanceof Text text) {
                return text;
            }
        }
        throw new AssertionError("There is no field to type into.");
    }
}
