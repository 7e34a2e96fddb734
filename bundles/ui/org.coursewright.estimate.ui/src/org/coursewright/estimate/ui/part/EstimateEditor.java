package org.coursewright.estimate.ui.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.core.derive.Derived;
import org.coursewright.diagram.ui.editor.ElementInput;
import org.coursewright.diagram.ui.editor.ProjectEditor;
import org.coursewright.diagram.ui.editor.ShownProject;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.project.Project;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.EditorPart;

/**
 * An editor of one part of a project's estimate. What it shows is worked out in the background and follows every edit; its
 * edits, history and unsaved state are the project's.
 */
public abstract class EstimateEditor extends EditorPart implements ProjectEditor {

    private static final String EXPORT = "org.coursewright.estimate.ui.export";

    private final EstimatePart part;
    private final List<ShownResult<?>> results = new ArrayList<>();
    private final ElementSelection selection = new ElementSelection();
    private ShownProject shown;
    private StateLine line;

    /** @param part that is shown */
    protected EstimateEditor(EstimatePart part) {
        this.part = part;
    }

    @Override
    public void init(IEditorSite site, IEditorInput opened) throws PartInitException {
        if (!(opened instanceof ElementInput element && element.element() instanceof Project)) {
            throw new PartInitException(EstimateText.notAProject);
        }
        setSite(site);
        setInput(opened);
        shown = new ShownProject(this, element, this::edited);
        namePart();
    }

    private void namePart() {
        setPartName(NLS.bind(EstimateText.partName, part.title(), getEditorInput().getName()));
    }

    @Override
    public final ShownProject shown() {
        return shown;
    }

    /** @return the project that is shown */
    protected final Project project() {
        return shown.project();
    }

    /**
     * Makes an edit, which can be undone.
     *
     * @param command that makes it
     * @return why not, in which case nothing has changed
     */
    protected final Optional<String> execute(ProjectCommand command) {
        return shown.execute(command);
    }

    /**
     * Shows a result from now on, until the editor is closed.
     *
     * @param wanted result
     * @param receiver told each new one, in the user interface thread
     * @param <T> its type
     * @return the result
     */
    protected final <T> ShownResult<T> show(Derived<T> wanted, Consumer<T> receiver) {
        ShownResult<T> result = new ShownResult<>(shown.results(), wanted, line.getDisplay()::asyncExec,
                receiver, this::refreshState);
        results.add(result);
        return result;
    }

    /**
     * Shows a result no longer.
     *
     * @param result that was shown
     */
    protected final void hide(ShownResult<?> result) {
        results.remove(result);
        result.end();
    }

    @Override
    public final void createPartControl(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        line = new StateLine(parent);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        if (part != EstimatePart.MIXES) {
            addButton(EstimateText.export, () -> run(EXPORT, Map.of(EXPORT + ".part", part.key())));
        }
        Composite body = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        getSite().setSelectionProvider(selection);
        createBody(body);
        refreshState();
    }

    /**
     * Makes everything below the line that says what it comes to.
     *
     * @param body without layout
     */
    protected abstract void createBody(Composite body);

    /** @return what it comes to, in a line */
    protected abstract String headline();

    /** @param element of the project, to be pointed out if this part shows it */
    protected abstract void reveal(EObject element);

    /** @param element that other views are to take for the selected one, or none */
    protected final void select(Optional<? extends EObject> element) {
        selection.setSelection(element.<ISelection>map(StructuredSelection::new).orElse(StructuredSelection.EMPTY));
    }

    private void refreshState() {
        if (line != null && !line.isDisposed()) {
            String failure = results.stream().flatMap(result -> result.failure().stream()).findFirst().orElse("");
            boolean working = failure.isEmpty() && results.stream().anyMatch(ShownResult::isStale);
            line.show(failure.isEmpty() ? headline() : failure, working ? EstimateText.working : "");
        }
    }

    /**
     * Adds a button beside the line that says what it comes to.
     *
     * @param words on it
     * @param pressed what it does
     */
    protected final void addButton(String words, Runnable pressed) {
        line.addButton(words, pressed);
    }

    /**
     * Executes a command on the project that is shown.
     *
     * @param id of the command
     * @param parameters of it, by their ids
     */
    protected final void run(String id, Map<String, String> parameters) {
        try {
            ParameterizedCommand command = ParameterizedCommand.generateCommand(getSite().getService(
                    ICommandService.class).getCommand(id), parameters);
            shown.activate();
            getSite().getService(IHandlerService.class).executeCommand(command, null);
        } catch (CommandException e) {
            throw new IllegalStateException(e);
        }
    }

    private void edited() {
        namePart();
        firePropertyChange(PROP_DIRTY);
        if (line != null && !line.isDisposed()) {
            projectEdited();
        }
        refreshState();
    }

    /** Called after each edit, for what is shown of the project itself; results come by themselves. */
    protected void projectEdited() {
        // most parts show results only
    }

    /** To be called by the part that takes the focus. */
    @Override
    public void setFocus() {
        shown.activate();
    }

    @Override
    public boolean isDirty() {
        return shown.isDirty();
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        throw new UnsupportedOperationException("saved as the project it belongs to");
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("not allowed");
    }

    @Override
    public void dispose() {
        results.forEach(ShownResult::end);
        if (shown != null) {
            shown.end();
        }
        super.dispose();
    }
}
