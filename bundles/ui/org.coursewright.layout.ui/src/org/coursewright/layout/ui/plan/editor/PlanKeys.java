package org.coursewright.layout.ui.plan.editor;

import java.util.Map;
import java.util.Optional;

import org.coursewright.diagram.ui.editor.DiagramKeys;
import org.coursewright.layout.ui.plan.action.Nudge;
import org.coursewright.layout.ui.plan.action.PlanSelection;
import org.coursewright.layout.ui.plan.part.DimensionPart;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/**
 * Keys of a plan: arrows move what is selected, with Shift in fine steps; Enter or F2 types into a dimension; Esc deselects;
 * letters take up tools. The keys of every diagram besides.
 */
final class PlanKeys extends DiagramKeys {

    private static final Map<Integer, Heading> ARROWS = Map.of(SWT.ARROW_LEFT, Heading.EAST.reversed(),
            SWT.ARROW_RIGHT, Heading.EAST, SWT.ARROW_UP, Heading.NORTH, SWT.ARROW_DOWN, Heading.NORTH.reversed());

    private final PlanSelection selected;
    private final Map<Character, Runnable> letters;

    /**
     * @param selected what is selected
     * @param fit shows everything
     * @param letters what they do
     */
    PlanKeys(PlanSelection selected, Runnable fit, Map<Character, Runnable> letters) {
        super((GraphicalViewer) selected.viewer(), fit);
        this.selected = selected;
        this.letters = letters;
    }

    @Override
    public boolean keyPressed(KeyEvent event) {
        int held = event.stateMask & SWT.MODIFIER_MASK;
        if (ARROWS.containsKey(event.keyCode) && (held & ~SWT.SHIFT) == 0) {
            return new Nudge(selected, held == SWT.SHIFT).go(ARROWS.get(event.keyCode))
                    || super.keyPressed(event);
        }
        return held == 0 && plain(event) || super.keyPressed(event);
    }

    private boolean plain(KeyEvent event) {
        if (event.character == SWT.ESC) {
            selected.viewer().deselectAll();
            return true;
        }
        if (event.character == SWT.CR || event.keyCode == SWT.KEYPAD_CR || event.keyCode == SWT.F2) {
            return type();
        }
        Runnable action = letters.get(Character.toLowerCase(event.character));
        Optional.ofNullable(action).ifPresent(Runnable::run);
        return action != null;
    }

    private boolean type() {
        Optional<EditPart> part = selected.single().filter(DimensionPart.class::isInstance);
        part.ifPresent(each -> each.performRequest(new Request(RequestConstants.REQ_DIRECT_EDIT)));
        return part.isPresent();
    }
}
