package org.coursewright.workbench.tests;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Widget;

/** Finds widgets and acts on them as a hand on mouse and keyboard would. */
final class Widgets {

    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private Widgets() {
    }

    /** All visible controls in and below another, outermost first. */
    static Stream<Control> in(Control root) {
        Stream<Control> below = root instanceof Composite composite
                ? Arrays.stream(composite.getChildren()).flatMap(Widgets::in)
                : Stream.empty();
        return root.isVisible() ? Stream.concat(Stream.of(root), below) : Stream.empty();
    }

    static <W extends Control> W find(Control root, Class<W> type, Predicate<W> which) {
        return in(root).filter(type::isInstance).map(type::cast).filter(which).findFirst().orElseThrow(
                () -> new AssertionError("There is no such " + type.getSimpleName() + " to be seen."));
    }

    static <W extends Control> W find(Control root, Class<W> type) {
        return find(root, type, any -> true);
    }

    static void select(Widget widget) {
        widget.notifyListeners(SWT.Selection, new Event());
        settle();
    }

    /** Waits for what happens in the background. */
    static void await(BooleanSupplier happened) {
        Instant end = Instant.now().plus(PATIENCE);
        while (!happened.getAsBoolean()) {
            if (Instant.now().isAfter(end)) {
                throw new AssertionError(
                        "It has not happened within " + PATIENCE + ". To be seen: " + in(new Window().shell())
                                .map(Widgets::textOf).filter(text -> !text.isEmpty()).toList());
            }
            settle();
        }
    }

    static String textOf(Control control) {
        if (control instanceof Label label) {
            return label.getText();
        }
        return control instanceof Table table
                ? Arrays.stream(table.getItems()).map(item -> item.getText() + " " + item.getText(1)).toList()
                        .toString()
                : "";
    }

    /** Works off everything that is waiting to be done in the user interface thread. */
    static void settle() {
        Display display = Display.getCurrent();
        while (display.readAndDispatch()) {
            continue;
        }
    }
}
