package org.coursewright.layout.ui.tests;

import org.coursewright.bond.Obstacle;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MouseEvent;
import org.eclipse.swt.widgets.Event;

/** An opening that is held with the mouse, as long as it is not given. */
final class MouseOnOpening {

    private final OpenFace face;
    private final Opening opening;
    private final Point held;
    private int last;

    private MouseOnOpening(OpenFace face, Opening opening, Point held) {
        this.face = face;
        this.opening = opening;
        this.held = held;
    }

    /** Presses the mouse in the middle of an opening. */
    static MouseOnOpening inTheMiddle(OpenFace face, Opening opening) {
        return taken(face, opening, box(face, opening).getCenter());
    }

    /** Selects an opening and presses the mouse on the grip of its far jamb. */
    static MouseOnOpening atTheFarJamb(OpenFace face, Opening opening) {
        face.viewer().select(face.part(opening));
        OpenFace.settle();
        return taken(face, opening, box(face, opening).getRight());
    }

    /** Selects an opening and presses the mouse on the grip of its near jamb. */
    static MouseOnOpening atTheNearJamb(OpenFace face, Opening opening) {
        face.viewer().select(face.part(opening));
        OpenFace.settle();
        return taken(face, opening, box(face, opening).getLeft());
    }

    private static MouseOnOpening taken(OpenFace face, Opening opening, Point at) {
        MouseOnOpening taken = new MouseOnOpening(face, opening, at);
        face.viewer().getEditDomain().mouseDown(taken.mouse(at, 0), face.viewer());
        return taken;
    }

    private static Rectangle box(OpenFace face, Opening opening) {
        Rectangle box = face.part(opening).getFigure().getBounds().getCopy();
        face.part(opening).getFigure().translateToAbsolute(box);
        return box;
    }

    /** Moves the mouse to so many pixels from where it was pressed, and waits for nothing. */
    void move(int by) {
        face.viewer().getEditDomain().mouseDrag(mouse(held.getTranslated(by, 0), SWT.BUTTON1), face.viewer());
        last = by;
    }

    /** Moves the mouse there, by way of half the distance as a mouse does. */
    void drag(int by) {
        move(by / 2);
        move(by);
        OpenFace.settle();
    }

    /** Lets go. */
    void give() {
        face.viewer().getEditDomain().mouseUp(mouse(held.getTranslated(last, 0), SWT.BUTTON1), face.viewer());
        OpenFace.settle();
    }

    /** Where the wall is shown with the opening, as it is laid. */
    Length shownOffset() {
        return shown().from();
    }

    /** How wide the opening is in the wall that is shown. */
    Length shownWidth() {
        return shown().to().minus(shown().from());
    }

    private Obstacle shown() {
        return face.wallPart().face().drawing().stream().flatMap(drawing -> drawing.face().obstacles().stream())
                .filter(each -> each.kind() == Obstacle.Kind.OPENING && each.mark().equals(opening.getMark()))
                .findFirst().orElseThrow();
    }

    private MouseEvent mouse(Point at, int buttons) {
        Event event = new Event();
        event.widget = face.viewer().getControl();
        event.x = at.x;
        event.y = at.y;
        event.button = 1;
        event.stateMask = buttons;
        return new MouseEvent(event);
    }
}
