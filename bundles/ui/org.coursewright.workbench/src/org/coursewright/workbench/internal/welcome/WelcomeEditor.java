package org.coursewright.workbench.internal.welcome;

import java.util.List;

import org.coursewright.workbench.WorkbenchIds;
import org.coursewright.workbench.internal.element.ElementIcons;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.EditorPart;

/** Greets whoever has no project open, and offers ways to begin; a way whose plug-in is not there is left out. */
public final class WelcomeEditor extends EditorPart {

    private static final int MARGIN = 32;
    private static final int GAP = 14;
    private static final int TEXT_WIDTH = 460;

    private static final List<Start> STARTS = List.of(
            new Start("building32", WelcomeText.demo, WelcomeText.demoDescription, WorkbenchIds.OPEN_DEMO),
            new Start("new-project32", WelcomeText.newProject, WelcomeText.newProjectDescription,
                    "org.eclipse.ui.newWizard(newWizardId=" + WorkbenchIds.BUNDLE + ".newProject)"),
            new Start("open32", WelcomeText.open, WelcomeText.openDescription, WorkbenchIds.OPEN_PROJECT),
            new Start("help32", WelcomeText.help, WelcomeText.helpDescription, "org.coursewright.help.show"));

    private LocalResourceManager images;

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public void createPartControl(Composite parent) {
        ScrolledComposite scrolled = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
        images = new LocalResourceManager(JFaceResources.getResources(), scrolled);
        Composite page = new Composite(scrolled, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(MARGIN, MARGIN).spacing(GAP, GAP).applyTo(page);
        createHeading(page);
        STARTS.stream().filter(this::isThere).forEach(start -> createStart(page, start));
        text(page, WelcomeText.caution);
        scrolled.setContent(page);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        scrolled.setMinSize(page.computeSize(SWT.DEFAULT, SWT.DEFAULT));
    }

    private void createHeading(Composite page) {
        icon(page, "product64");
        Label heading = new Label(page, SWT.WRAP);
        heading.setText(WelcomeText.heading);
        heading.setFont(JFaceResources.getFontRegistry().get(JFaceResources.HEADER_FONT));
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(heading);
    }

    private boolean isThere(Start start) {
        return getSite().getService(ICommandService.class).getCommand(start.commandId()).isDefined();
    }

    private void createStart(Composite page, Start start) {
        icon(page, start.icon());
        Composite words = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(words);
        Link link = new Link(words, SWT.NONE);
        link.setText("<a>" + start.label() + "</a>");
        link.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        link.addListener(SWT.Selection, event -> run(start));
        Label description = new Label(words, SWT.WRAP);
        description.setText(start.description());
        GridDataFactory.fillDefaults().hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(description);
    }

    private void icon(Composite page, String name) {
        ImageDescriptor icon = ElementIcons.named(name);
        Label label = new Label(page, SWT.NONE);
        label.setImage(images.create(icon));
        GridDataFactory.swtDefaults().align(SWT.CENTER, SWT.BEGINNING).applyTo(label);
    }

    private static void text(Composite page, String words) {
        Control text = new Label(page, SWT.WRAP);
        ((Label) text).setText(words);
        GridDataFactory.fillDefaults().span(2, 1).indent(0, GAP).hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(text);
    }

    private void run(Start start) {
        try {
            getSite().getService(IHandlerService.class).executeCommand(
                    getSite().getService(ICommandService.class).deserialize(start.command()), null);
        } catch (CommandException e) {
            throw new IllegalStateException("%s did not work.".formatted(start.commandId()), e);
        }
    }

    @Override
    public void setFocus() {
        // the first link is next in the order of the tabulator key
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        throw new UnsupportedOperationException("there is nothing to save");
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("there is nothing to save");
    }
}
