package org.coursewright.workbench.tests;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;

/** The workbench window as somebody in front of it uses it. */
final class Window {

    private static final String BUNDLE = "org.coursewright.workbench";

    Shell shell() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell();
    }

    IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    OpenProjects projects() {
        return PlatformUI.getWorkbench().getService(OpenProjects.class);
    }

    /** What something of the active project is. */
    <T> T active(Function<ProjectSession, T> what) {
        return projects().active().map(what).orElseThrow();
    }

    /** File, Open, with the file already chosen. */
    void open(Path file) throws CommandException {
        execute(BUNDLE + ".openProject", Map.of(BUNDLE + ".openProject.file", file.toString()));
    }

    void execute(String id, Map<String, String> parameters) throws CommandException {
        ParameterizedCommand command = ParameterizedCommand.generateCommand(
                PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(id), parameters);
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
        Widgets.settle();
    }

    /** Closes everything without asking, to leave nothing to the next test. */
    void forgetEverything() {
        projects().closeAll();
        Widgets.settle();
    }

    Tree tree() throws PartInitException {
        page().showView(BUNDLE + ".navigator");
        Widgets.settle();
        return Widgets.find(shell(), Tree.class);
    }

    /** Selects the element at the end of a path of labels. */
    TreeItem select(String... path) throws PartInitException {
        TreeItem item = item(path);
        Tree tree = item.getParent();
        tree.setFocus();
        tree.setSelection(item);
        Event event = new Event();
        event.item = item;
        tree.notifyListeners(SWT.Selection, event);
        Widgets.settle();
        return item;
    }

    TreeItem item(String... path) throws PartInitException {
        TreeItem[] level = tree().getItems();
        TreeItem found = null;
        for (String label : path) {
            found = Stream.of(level).filter(item -> matches(item, label)).findFirst().orElseThrow(
                    () -> new AssertionError("No \"" + label + "\" in the navigator."));
            expand(found);
            level = found.getItems();
        }
        return found;
    }

    List<String> labels(TreeItem parent) {
        return Arrays.stream(parent.getItems()).map(TreeItem::getText).toList();
    }

    private static boolean matches(TreeItem item, String label) {
        String text = item.getText().replaceFirst("^\\*", "");
        return text.equals(label) || text.startsWith(label + "  ");
    }

    private static void expand(TreeItem item) {
        if (!item.getExpanded() && item.getItemCount() > 0) {
            Event event = new Event();
            event.item = item;
            item.getParent().notifyListeners(SWT.Expand, event);
            item.setExpanded(true);
            Widgets.settle();
        }
    }

    /** Texts of all labels that are to be seen. */
    Stream<String> labels() {
        return Widgets.in(shell()).filter(Label.class::isInstance).map(Label.class::cast).map(Label::getText);
    }

    /** Whether a label that is to be seen begins like this. */
    boolean shows(String text) {
        return Widgets.in(shell())
                .anyMatch(control -> control instanceof Label label && label.getText().startsWith(text)
                        || control instanceof CLabel clabel && clabel.getText().startsWith(text));
    }

    /** The field of a property, by its label. */
    <W extends Control> W field(Class<W> type, String label) {
        List<Control> all = Widgets.in(shell()).toList();
        Control text = Widgets.find(shell(), Label.class, each -> each.getText().equals(label + ":"));
        return all.stream().skip(all.indexOf(text)).filter(type::isInstance).map(type::cast).findFirst().orElseThrow();
    }

    /** Chooses an entry of the menu bar; the entry's label may go on after what is given. */
    void choose(String menu, String entry) {
        MenuItem item = entry(menu, entry);
        if (!item.isEnabled()) {
            throw new AssertionError(item.getText() + " is disabled.");
        }
        Widgets.select(item);
    }

    /** Presses a button in the tool bar of a view. */
    void press(String view, String label) {
        IToolBarManager tools = page().findView(view).getViewSite().getActionBars().getToolBarManager();
        Arrays.stream(tools.getItems()).filter(ActionContributionItem.class::isInstance)
                .map(item -> ((ActionContributionItem) item).getAction())
                .filter(action -> action.getText().equals(label) && action.isEnabled()).findFirst()
                .orElseThrow(() -> new AssertionError("No button " + label)).run();
        Widgets.settle();
    }

    MenuItem entry(String menu, String entry) {
        Menu open = labelled(shell().getMenuBar(), menu).getMenu();
        open.notifyListeners(SWT.Show, new Event());
        Widgets.settle();
        return labelled(open, entry);
    }

    private static MenuItem labelled(Menu menu, String label) {
        return Arrays.stream(menu.getItems()).filter(item -> plain(item).startsWith(label)).findFirst().orElseThrow(
                () -> new AssertionError("No \"" + label + "\" among " + Arrays.stream(menu.getItems()).map(
                        Window::plain).collect(Collectors.joining(", "))));
    }

    static String plain(MenuItem item) {
        return item.getText().replace("&", "").replaceFirst("\t.*", "");
    }

    /** Types over what stands in a field, and confirms. */
    static void type(Text field, String text) {
        field.setFocus();
        field.setText(text);
        Event enter = new Event();
        enter.character = SWT.CR;
        enter.keyCode = SWT.CR;
        field.notifyListeners(SWT.KeyDown, enter);
        field.notifyListeners(SWT.DefaultSelection, new Event());
        Widgets.settle();
    }
}
