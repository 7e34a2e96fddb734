package org.coursewright.layout.ui.editor;

import java.util.Optional;

import org.coursewright.diagram.ui.editor.DiagramKeys;
import org.coursewright.layout.ui.part.OpeningGrip;
import org.coursewright.layout.ui.part.OpeningPart;
import org.coursewright.model.building.WallPlace;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/**
 * Keys of a wall face: arrows walk from piece to piece, or move the opening that is selected by one step; P and J pin the
 * selected piece and the joints of its run, U takes pins out; [ and ] choose what runs through at the start and at the end;
 * the keys of every diagram besides.
 */
final class FaceKeys extends DiagramKeys {

    private final GraphicalViewer viewer;
    private final Walk walk;
    private final FaceMenu menu;

    /** Goes from the selected piece to another. */
    @FunctionalInterface
    interface Walk {
        void by(int pieces, int courses);
    }

    FaceKeys(GraphicalViewer viewer, Runnable fit, Walk walk, FaceMenu menu) {
        super(viewer, fit);
        this.viewer = viewer;
        this.walk = walk;
        this.menu = menu;
    }

    @Override
    public boolean keyPressed(KeyEvent event) {
        if ((event.stateMask & SWT.MODIFIER_MASK) != 0) {
            return movesAJamb(event) || super.keyPressed(event);
        }
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> sideways(-1);
            case SWT.ARROW_RIGHT -> sideways(1);
            case SWT.ARROW_UP -> walk.by(0, 1);
            case SWT.ARROW_DOWN -> walk.by(0, -1);
            default -> {
                return decides(event) || super.keyPressed(event);
            }
        }
        return true;
    }

    /** Shift moves the far jamb, Alt the near one. */
    private boolean movesAJamb(KeyEvent event) {
        boolean arrow = event.keyCode == SWT.ARROW_LEFT || event.keyCode == SWT.ARROW_RIGHT;
        int held = event.stateMask & SWT.MODIFIER_MASK;
        if (!arrow || held != SWT.SHIFT && held != SWT.ALT || selectedOpening().isEmpty()) {
            return false;
        }
        selectedOpening().get().nudge(held == SWT.SHIFT ? OpeningGrip.FAR_JAMB : OpeningGrip.NEAR_JAMB,
                event.keyCode == SWT.ARROW_LEFT ? -1 : 1);
        return true;
    }

    private boolean decides(KeyEvent event) {
        switch (event.keyCode) {
            case 'p' -> menu.pinPiece();
            case 'j' -> menu.pinJoint();
            case 'u' -> menu.unpin();
            case '[' -> menu.nextHanding(WallPlace.START);
            case ']' -> menu.nextHanding(WallPlace.END);
            default -> {
                return false;
            }
        }
        return true;
    }

    private void sideways(int steps) {
        selectedOpening().ifPresentOrElse(opening -> opening.nudge(OpeningGrip.OPENING, steps),
                () -> walk.by(steps, 0));
    }

    private Optional<OpeningPart> selectedOpening() {
        return viewer.getSelectedEditParts().size() == 1
                && viewer.getSelectedEditParts().get(0) instanceof OpeningPart opening
                        ? Optional.of(opening)
                        : Optional.empty();
    }
}
