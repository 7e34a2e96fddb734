package org.coursewright.workbench.tests;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Fills in a wizard step by step while it keeps the window waiting: each step as soon as what it needs is to be seen. */
final class WizardFilling {

    private static final int POLL_MILLISECONDS = 50;
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final Deque<Function<Stream<Control>, Boolean>> steps = new ArrayDeque<>();
    private final StringBuilder seen = new StringBuilder();
    private Instant end = Instant.MAX;

    /** Types into the field behind a label. */
    WizardFilling type(String label, String text) {
        steps.add(controls -> {
            Iterable<Control> all = controls::iterator;
            boolean found = false;
            for (Control control : all) {
                found |= control instanceof Label each && each.getText().startsWith(label);
                if (found && control instanceof Text field) {
                    field.setText(text);
                    return true;
                }
            }
            return false;
        });
        return this;
    }

    /** Presses a button once it may be pressed. */
    WizardFilling press(String label) {
        steps.add(controls -> {
            Optional<Button> button = controls.filter(Button.class::isInstance).map(Button.class::cast)
                    .filter(each -> each.isEnabled() && each.getText().replace("&", "").equals(label)).findFirst();
            button.ifPresent(Widgets::select);
            return button.isPresent();
        });
        return this;
    }

    /** Does what opens the wizard, and all steps in it. */
    void inWizardOf(Runnable opening) {
        end = Instant.now().plus(PATIENCE);
        Display.getCurrent().timerExec(POLL_MILLISECONDS, this::goOn);
        opening.run();
        if (!steps.isEmpty()) {
            throw new AssertionError(steps.size() + " steps were not made. Seen: " + seen);
        }
    }

    /** All texts that were to be seen at any step. */
    String seen() {
        return seen.toString();
    }

    private void goOn() {
        Optional<Shell> shell = topmost();
        if (shell.isPresent()) {
            Widgets.in(shell.get()).forEach(this::note);
        }
        if (Instant.now().isAfter(end)) {
            Arrays.stream(Display.getCurrent().getShells()).filter(each -> each != new Window().shell())
                    .forEach(Shell::dispose);
            return;
        }
        if (!steps.isEmpty()) {
            Display.getCurrent().timerExec(POLL_MILLISECONDS, this::goOn);
        }
        Function<Stream<Control>, Boolean> next = steps.poll();
        if (next != null && (shell.isEmpty() || !next.apply(Widgets.in(shell.get())))) {
            steps.addFirst(next);
        }
    }

    /** A dialog over the wizard comes first. */
    private static Optional<Shell> topmost() {
        Shell window = new Window().shell();
        return Arrays.stream(Display.getCurrent().getShells())
                .filter(shell -> shell != window && shell.isVisible()).reduce((below, above) -> above);
    }

    private void note(Control control) {
        if (control instanceof Label label) {
            seen.append(label.getText()).append('\n');
        } else if (control instanceof Text text) {
            seen.append(text.getText()).append('\n');
        }
    }
}
