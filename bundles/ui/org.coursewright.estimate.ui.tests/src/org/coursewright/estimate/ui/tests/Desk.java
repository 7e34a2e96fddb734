package org.coursewright.estimate.ui.tests;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.coursewright.core.derive.Derived;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.project.Project;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Widget;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;

/** The workbench as somebody who reckons a building uses it: commands, and the widgets of what is open. */
final class Desk {

    private static final String WORKBENCH = "org.coursewright.workbench";
    private static final String ESTIMATE = "org.coursewright.estimate.ui";
    private static final Duration PATIENCE = Duration.ofSeconds(90);

    private Desk() {
    }

    static void openProject(Path file) throws CommandException {
        run(WORKBENCH + ".openProject", Map.of(WORKBENCH + ".openProject.file", file.toString()));
    }

    /** Estimate menu: take-off, price, scenarios or mixes. */
    static IEditorPart open(String part) throws CommandException {
        run(ESTIMATE + ".open", Map.of(ESTIMATE + ".open.part", part));
        return page().getActiveEditor();
    }

    /** Selects an element in the navigator and opens it, as a double-click does. */
    static IEditorPart open(EObject element) throws CommandException, PartInitException {
        page().showView(WORKBENCH + ".navigator").getSite().getSelectionProvider().setSelection(
                new StructuredSelection(element));
        settle();
        run(WORKBENCH + ".openElement", Map.of());
        return page().getActiveEditor();
    }

    static void export(String part, Path target) throws CommandException {
        run(ESTIMATE + ".export", Map.of(ESTIMATE + ".export.part", part, ESTIMATE + ".export.target", target
                .toString()));
    }

    static void run(String id, Map<String, String> parameters) throws CommandException {
        order(id, parameters);
        settle();
    }

    /** Executes a command, and leaves to the caller what follows. */
    static void order(String id, Map<String, String> parameters) throws CommandException {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(ParameterizedCommand.generateCommand(
                PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(id), parameters), null);
    }

    static void undo() throws CommandException {
        run("org.eclipse.ui.edit.undo", Map.of());
    }

    static void closeAll() {
        PlatformUI.getWorkbench().getService(OpenProjects.class).closeAll();
        settle();
    }

    static Project project() {
        return active(ProjectSession::project);
    }

    /** A result of the project as it is, worked out now. */
    static <T> T result(Derived<T> wanted) {
        return active(session -> session.derived().get(wanted));
    }

    static void execute(ProjectCommand command) {
        PlatformUI.getWorkbench().getService(OpenProjects.class).active()
                .ifPresent(session -> session.execute(command));
    }

    private static <T> T active(Function<ProjectSession, T> what) {
        return PlatformUI.getWorkbench().getService(OpenProjects.class).active().map(what).orElseThrow();
    }

    static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    }

    private static Shell shell() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
    }

    /** All visible controls in and below another, outermost first. */
    private static Stream<Control> in(Control root) {
        Stream<Control> below = root instanceof Composite composite
                ? Arrays.stream(composite.getChildren()).flatMap(Desk::in)
                : Stream.empty();
        return root.isVisible() ? Stream.concat(Stream.of(root), below) : Stream.empty();
    }

    static <W extends Control> W find(Class<W> type, Predicate<W> which) {
        return in(shell()).filter(type::isInstance).map(type::cast).filter(which).findFirst().orElseThrow(
                () -> new AssertionError("There is no such " + type.getSimpleName() + " to be seen."));
    }

    /** A table by the title of one of its columns. */
    static Table table(String column) {
        return find(Table.class, table -> Arrays.stream(table.getColumns()).anyMatch(each -> each.getText().equals(
                column)));
    }

    static Button button(String label) {
        return find(Button.class, button -> button.getText().replace("&", "").equals(label));
    }

    /** The field behind a label. */
    static Text field(String label) {
        return behind(shell(), label, Text.class);
    }

    /** The first control of its kind behind a label. */
    static <W extends Control> W behind(Shell in, String label, Class<W> type) {
        return in(in).dropWhile(each -> !(each instanceof Label words && words.getText().replace("&", "").equals(
                label))).filter(type::isInstance).map(type::cast).findFirst().orElseThrow(
                        () -> new AssertionError("Nothing to be seen behind " + label));
    }

    /** Does what opens a dialog, and something in it that closes it. */
    static void inDialog(Runnable opening, Consumer<Shell> deed) {
        List<Throwable> trouble = new ArrayList<>();
        Display.getCurrent().asyncExec(() -> {
            Shell dialog = Display.getCurrent().getActiveShell();
            try {
                deed.accept(dialog);
            } catch (RuntimeException | AssertionError e) {
                trouble.add(e);
            } finally {
                dialog.close();
            }
        });
        opening.run();
        settle();
        if (!trouble.isEmpty()) {
            throw new AssertionError(trouble.get(0));
        }
    }

    static Button button(Shell in, String label) {
        return in(in).filter(Button.class::isInstance).map(Button.class::cast).filter(each -> each.getText().replace(
                "&", "").equals(label)).findFirst().orElseThrow(() -> new AssertionError("No button " + label));
    }

    /** The list of a dialog that has such a row. */
    static TableItem row(Shell in, String words) {
        return in(in).filter(Table.class::isInstance).flatMap(table -> Arrays.stream(((Table) table).getItems()))
                .filter(
                        item -> item.getText().equals(words))
                .findFirst().orElseThrow(() -> new AssertionError("No row " + words));
    }

    /** Ticks a row as a click on its box does. */
    static void tick(TableItem row) {
        row.setChecked(true);
        Event event = new Event();
        event.item = row;
        event.detail = SWT.CHECK;
        row.getParent().notifyListeners(SWT.Selection, event);
    }

    static boolean says(String words) {
        return in(shell()).anyMatch(control -> control instanceof Label label && label.getText().contains(words));
    }

    static void press(Button button) {
        if (!button.isEnabled()) {
            throw new AssertionError(button.getText() + " is disabled.");
        }
        select(button);
    }

    static void select(Widget widget) {
        widget.notifyListeners(SWT.Selection, new Event());
        settle();
    }

    /** Selects a row as a click does. */
    static void select(TableItem row) {
        Event event = new Event();
        event.item = row;
        row.getParent().setFocus();
        row.getParent().setSelection(row);
        row.getParent().notifyListeners(SWT.Selection, event);
        settle();
    }

    /** A row by what stands in its first cells. */
    static TableItem row(Table table, String... cells) {
        return Arrays.stream(table.getItems()).filter(item -> begins(item, cells)).findFirst().orElseThrow(
                () -> new AssertionError("No row " + List.of(cells)));
    }

    private static boolean begins(TableItem item, String... cells) {
        for (int i = 0; i < cells.length; i++) {
            if (!item.getText(i).equals(cells[i])) {
                return false;
            }
        }
        return true;
    }

    /** Clicks on a cell of a row that is selected by that, types over it and presses Enter. */
    static void typeOver(TableItem row, int column, String typed) {
        Table table = row.getParent();
        table.showItem(row);
        select(row);
        Rectangle cell = row.getBounds(column);
        Event click = new Event();
        click.x = cell.x + cell.width / 2;
        click.y = cell.y + cell.height / 2;
        click.button = 1;
        click.count = 1;
        table.notifyListeners(SWT.MouseDown, click);
        settle();
        Text editor = Arrays.stream(table.getChildren()).filter(Text.class::isInstance).map(Text.class::cast).filter(
                Control::isVisible).findFirst().orElseThrow(() -> new AssertionError("The cell cannot be typed over."));
        editor.setText(typed);
        editor.notifyListeners(SWT.DefaultSelection, new Event());
        settle();
    }

    /** Types into a field and presses Enter. */
    static void type(Text field, String typed) {
        field.setText(typed);
        field.notifyListeners(SWT.DefaultSelection, new Event());
        settle();
    }

    static void await(BooleanSupplier happened) {
        Instant end = Instant.now().plus(PATIENCE);
        while (!happened.getAsBoolean()) {
            if (Instant.now().isAfter(end)) {
                throw new AssertionError("It has not happened within " + PATIENCE + ". To be seen: "
                        + in(shell()).filter(
                                Label.class::isInstance).map(each -> ((Label) each).getText())
                                .filter(text -> !text.isBlank())
                                .toList());
            }
            settle();
        }
    }

    static void settle() {
        Display display = Display.getCurrent();
        while (display.readAndDispatch()) {
            continue;
        }
    }
}
