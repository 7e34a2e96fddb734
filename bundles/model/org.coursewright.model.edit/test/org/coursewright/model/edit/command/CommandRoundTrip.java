package org.coursewright.model.edit.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Supplier;

import org.coursewright.model.project.Project;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Takes a command through execute, undo and redo, alone and among others, and compares the project with copies. */
public final class CommandRoundTrip {

    private final Project project;
    private final Supplier<? extends Command> commands;

    private CommandRoundTrip(Project project, Supplier<? extends Command> commands) {
        this.project = project;
        this.commands = commands;
    }

    /**
     * Asserts that a command changes the project, and that undo and redo give exactly the states before and after.
     *
     * @param project that the command edits
     * @param commands makes the command anew, for the project as it is then
     */
    public static void verify(Project project, Supplier<? extends Command> commands) {
        CommandRoundTrip trip = new CommandRoundTrip(project, commands);
        trip.alone();
        trip.amongOthers();
    }

    private void alone() {
        BasicCommandStack history = new BasicCommandStack();
        EObject before = copy();
        Command command = commands.get();
        assertThat(command.canExecute()).as("executable: %s", command.getLabel()).isTrue();
        history.execute(command);
        EObject after = copy();
        assertThat(EcoreUtil.equals(before, after)).as("changes nothing").isFalse();
        assertThat(command.canExecute()).as("executable twice").isFalse();
        assertAffectedAreThere(command);
        for (int i = 0; i < 2; i++) {
            history.undo();
            assertSame(before, "undone");
            assertAffectedAreThere(command);
            history.redo();
            assertSame(after, "redone");
        }
        history.undo();
    }

    private void amongOthers() {
        BasicCommandStack history = new BasicCommandStack();
        EObject initial = copy();
        history.execute(new NameProjectCommand(project, "Before"));
        EObject first = copy();
        history.execute(commands.get());
        EObject second = copy();
        history.execute(new NameProjectCommand(project, "After"));
        EObject third = copy();
        for (EObject expected : new EObject[]{second, first, initial}) {
            history.undo();
            assertSame(expected, "undone among others");
        }
        for (EObject expected : new EObject[]{first, second, third}) {
            history.redo();
            assertSame(expected, "redone among others");
        }
    }

    private EObject copy() {
        return EcoreUtil.copy(project);
    }

    private void assertSame(EObject expected, String when) {
        assertThat(EcoreUtil.equals(project, expected)).as(when).isTrue();
    }

    private void assertAffectedAreThere(Command command) {
        assertThat(command.getAffectedObjects()).isNotEmpty()
                .allMatch(each -> EcoreUtil.getRootContainer((EObject) each) == project);
    }
}
