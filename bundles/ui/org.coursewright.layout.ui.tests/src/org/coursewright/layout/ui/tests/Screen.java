package org.coursewright.layout.ui.tests;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** The widgets of the window, found as somebody finds them who looks at it. */
final class Screen {

    private static final int SOON = 200;

    private Screen() {
    }

    /** All words that labels show, and the names of what draws its words itself. */
    static List<String> labels() {
        return Stream.concat(all(Label.class).map(Label::getText),
                all(Composite.class).flatMap(each -> AccessibleName.of(each).stream())).toList();
    }

    /** All widgets of a kind in the window. */
    static <T extends Control> Stream<T> all(Class<T> kind) {
        return in(OpenFace.page().getWorkbenchWindow().getShell()).filter(kind::isInstance).map(kind::cast);
    }

    private static Stream<Control> in(Control root) {
        return root instanceof Composite composite
                ? Stream.concat(Stream.of(root), Stream.of(composite.getChildren()).flatMap(Screen::in))
                : Stream.of(root);
    }

    /** Presses a button of the window, by its words without the mark of its key. */
    static void press(String words) {
        press(button(all(Button.class), words));
    }

    static Button button(Stream<Button> among, String words) {
        Predicate<Button> reads = button -> button.getText().replace("&", "").startsWith(words);
        return among.filter(reads).filter(Control::isVisible).findFirst()
                .orElseThrow(() -> new AssertionError("There is no button \"" + words + "\"."));
    }

    private static void press(Button button) {
        if ((button.getStyle() & SWT.CHECK) != 0) {
            button.setSelection(!button.getSelection());
        }
        button.notifyListeners(SWT.Selection, new Event());
        OpenFace.settle();
    }

    /** Types into the dialog that comes up next, and confirms it. */
    static void typeIntoNextDialog(String words) {
        Display display = Display.getCurrent();
        display.timerExec(SOON, () -> {
            Shell dialog = display.getActiveShell();
            in(dialog).filter(Text.class::isInstance).map(Text.class::cast).filter(Text::getEditable).findFirst()
                    .ifPresent(text -> text.setText(words));
            press(button(in(dialog).filter(Button.class::isInstance).map(Button.class::cast), "OK"));
        });
    }

    /** Presses a key while a control has the focus. */
    static void key(Control control, char key) {
        for (int type : new int[]{SWT.KeyDown, SWT.KeyUp}) {
            Event event = new Event();
            event.keyCode = key;
            event.character = key;
            control.notifyListeners(type, event);
        }
        OpenFace.settle();
    }

    /** Presses a key that writes nothing, while others are held. */
    static void key(Control control, int code, int held) {
        for (int type : new int[]{SWT.KeyDown, SWT.KeyUp}) {
            Event event = new Event();
            event.keyCode = code;
            event.stateMask = held;
            control.notifyListeners(type, event);
        }
        OpenFace.settle();
    }

    /** Presses and lets go of the mouse at a place of a control. */
    static void click(Control control, int x, int y) {
        for (int type : new int[]{SWT.MouseDown, SWT.MouseUp}) {
            Event event = new Event();
            event.x = x;
            event.y = y;
            event.button = 1;
            event.count = 1;
            control.notifyListeners(type, event);
        }
        OpenFace.settle();
    }
}
