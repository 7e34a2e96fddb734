package org.coursewright.workbench.tests;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Answers the next dialog, and keeps what it said. */
final class Dialogs {

    private static final int POLL_MILLISECONDS = 50;
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final String button;
    private final Instant end = Instant.now().plus(PATIENCE);
    private Optional<String> said = Optional.empty();

    private Dialogs(String button) {
        this.button = button;
    }

    /** From now on waits for a dialog with a button of that label, and presses it. */
    static Dialogs answer(String button) {
        Dialogs answer = new Dialogs(button);
        Display.getCurrent().timerExec(POLL_MILLISECONDS, answer::look);
        return answer;
    }

    /** What the dialog said: its title and its texts. */
    String said() {
        return said.orElseThrow(() -> new AssertionError("No dialog with a button \"" + button + "\" was shown."));
    }

    private void look() {
        Optional<Button> found = shells().flatMap(Widgets::in).filter(Button.class::isInstance).map(Button.class::cast)
                .filter(this::isMeant).findFirst();
        if (found.isPresent()) {
            press(found.get());
        } else if (Instant.now().isBefore(end)) {
            Display.getCurrent().timerExec(POLL_MILLISECONDS, this::look);
        } else {
            shells().toList().forEach(Shell::close); // or a dialog without that button would wait for ever
        }
    }

    /** Every dialog that is open: all shells but that of the window. */
    private static Stream<Shell> shells() {
        Shell window = new Window().shell();
        return Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell != window)
                .filter(Shell::isVisible);
    }

    private boolean isMeant(Button candidate) {
        return candidate.getText().replace("&", "").equals(button);
    }

    private void press(Button found) {
        Shell shell = found.getShell();
        said = Optional.of(shell.getText() + "\n" + Widgets.in(shell).filter(Label.class::isInstance)
                .map(Label.class::cast).map(Label::getText).collect(Collectors.joining("\n")));
        Widgets.select(found);
    }
}
