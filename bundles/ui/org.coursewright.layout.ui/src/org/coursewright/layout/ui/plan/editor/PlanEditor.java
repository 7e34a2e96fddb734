package org.coursewright.layout.ui.plan.editor;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.check.CheckReport;
import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.derive.NodeState;
import org.coursewright.diagram.ui.editor.DiagramEditor;
import org.coursewright.layout.ui.picture.PictureExport;
import org.coursewright.layout.ui.plan.action.PlanSelection;
import org.coursewright.layout.ui.plan.paint.Lettering;
import org.coursewright.layout.ui.plan.paint.PlanInk;
import org.coursewright.layout.ui.plan.part.PlanParts;
import org.coursewright.layout.ui.plan.part.PlanState;
import org.coursewright.layout.ui.plan.part.PlanTrouble;
import org.coursewright.layout.ui.plan.part.StoreyPaintings;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Building;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.WallPlace;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;

/** Shows a storey of the building from above. */
public final class PlanEditor extends DiagramEditor implements PlanHeader.Wishes {

    /** Under which the editor is registered. */
    public static final String ID = "org.coursewright.layout.ui.plan";

    private PlanView view;
    private PlanHeader header;
    private PlanPaper paper;
    private PlanTools tools;
    private PlanFit fit;
    private LengthFormat format;
    private DerivationGraph.Listening listening;

    @Override
    public void init(IEditorSite site, IEditorInput opened) throws PartInitException {
        super.init(site, opened);
        PlanDomain domain = new PlanDomain(this);
        domain.setCommandStack(getCommandStack());
        setEditDomain(domain);
    }

    private PlanSelection selected() {
        return new PlanSelection(getGraphicalViewer(), this::say);
    }

    private Building building() {
        return (Building) element();
    }

    private List<Storey> storeys() {
        return isElementThere() ? building().getStoreys() : List.of();
    }

    @Override
    public void createPartControl(Composite parent) {
        view = new PlanView(project(), new Lettering(smallFont(parent)));
        format = view.format();
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        header = new PlanHeader(parent, this);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(header);
        paper = new PlanPaper(parent);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(paper);
        super.createPartControl(paper.middle());
        paper.addRulers(getGraphicalViewer(), this::state);
        tools = new PlanTools(getEditDomain(), getGraphicalViewer(), this::say);
        ((PlanDomain) getEditDomain()).onToolChange(this::describeSelection);
        describeSelection();
        listening = results().listen(ProjectResults.CHECK, parent.getDisplay()::asyncExec, this::checked);
        storeys().stream().findFirst().ifPresentOrElse(this::show, this::describe);
    }

    /** Words of a plan are a little smaller than those of the window. */
    private static Font smallFont(Composite parent) {
        FontDescriptor small = FontDescriptor.createFrom(parent.getFont()).increaseHeight(-1);
        return JFaceResources.managerFor(parent).create(small);
    }

    @Override
    protected void configureGraphicalViewer() {
        super.configureGraphicalViewer();
        GraphicalViewer viewer = getGraphicalViewer();
        viewer.setEditPartFactory(new PlanParts(this::state));
        viewer.setKeyHandler(new PlanKeys(selected(), this::fit, Map.of('s', () -> tool(PlanTools.Kind.SELECT), 'w',
                () -> tool(PlanTools.Kind.WALL), 'd', () -> tool(PlanTools.Kind.DOOR), 'n',
                () -> tool(PlanTools.Kind.WINDOW), '[', () -> handing(WallPlace.START), ']',
                () -> handing(WallPlace.END))));
        viewer.getControl().addTraverseListener(new PlanWalk(selected()));
        getActionRegistry().registerAction(new PlanPrintAction(this, () -> new StoreyPaintings(state()).picture()));
        PlanActions.add(this, selected(), getActionRegistry());
        fit = new PlanFit(viewer, () -> view.shape().bounds().or(() -> state().underlay().flatMap(StoreyShape::bounds)),
                scale -> new StoreyPaintings(state()).bounds(scale), corner -> {
                    view.corner(corner);
                    refreshParts();
                });
        viewer.addSelectionChangedListener(event -> chosen());
        AccessibleName.give(viewer.getControl(),
                () -> NLS.bind(PlanText.accessiblePlan, view.storey().map(ElementLabels::of).orElse("")));
    }

    @Override
    public void tool(PlanTools.Kind kind) {
        tools.take(kind);
        getGraphicalViewer().getControl().setFocus();
    }

    /** Lets the next wall run through at an end of the selected one. */
    private void handing(WallPlace place) {
        selected().handing().ifPresent(menu -> menu.next(place));
    }

    private void describeSelection() {
        if (!header.isDisposed()) {
            header.show(tools.active());
            if (tools.active() == PlanTools.Kind.SELECT) {
                say(words(), false);
            }
        }
    }

    private void say(String text, boolean refusal) {
        header.say(text, refusal ? Optional.of(ink().warning()) : Optional.empty());
    }

    @Override
    protected void initializeGraphicalViewer() {
        // nothing is shown before a storey is chosen
    }

    /** @return what is shown at present */
    public PlanState state() {
        return view.state(PlanInk.with(ink()));
    }

    /**
     * Shows a storey instead of the one before.
     *
     * @param storey of the building
     */
    @Override
    public void show(Storey storey) {
        if (view.storey().filter(storey::equals).isPresent()) {
            return;
        }
        view.show(Optional.of(storey));
        showContents();
        describe();
        fit.now();
    }

    @Override
    protected void refreshParts() {
        super.refreshParts();
        if (paper != null) {
            paper.redrawRulers();
        }
    }

    private void showContents() {
        view.storey().ifPresentOrElse(getGraphicalViewer()::setContents,
                () -> getGraphicalViewer().setContents((EditPart) null));
    }

    @Override
    public void underlay(Optional<Storey> storey) {
        view.underlay(storey);
        refreshParts();
    }

    @Override
    public void grid(boolean shown) {
        view.showGrid(shown);
        refreshParts();
    }

    @Override
    public void dimensions(boolean shown) {
        view.showDimensions(shown);
        refreshParts();
    }

    @Override
    public void fit() {
        fit.now();
    }

    @Override
    public void export() {
        String name = view.storey().map(ElementLabels::of).orElse("");
        new StoreyPaintings(state()).picture()
                .ifPresent(picture -> new PictureExport(getSite().getShell()).ask(picture, PlanText.exportTitle, name));
    }

    private void checked(NodeState<CheckReport> report) {
        if (header.isDisposed()) {
            return;
        }
        report.value().ifPresent(found -> {
            view.trouble(PlanTrouble.of(found.findings(), project()));
            view.laid(results().state(ProjectResults.LAYOUT).value());
            refreshParts();
            describeSelection();
        });
    }

    @Override
    protected void edited() {
        view.changed();
        if (!storeys().containsAll(view.storey().stream().toList())) {
            view.show(storeys().stream().findFirst());
            showContents();
        }
        view.underlay(view.underlay().filter(storeys()::contains));
        super.edited();
        if (!format.equals(view.format())) {
            format = view.format();
            fit.writtenAnew();
        }
        describe();
    }

    private void describe() {
        header.show(storeys(), view.storey(), view.underlay());
        setPartName(view.storey().map(storey -> NLS.bind(PlanText.part, ElementLabels.of(storey)))
                .orElseGet(() -> getEditorInput().getName()));
        say(words(), false);
    }

    private String words() {
        return isElementThere()
                ? new PlanWords(view.storey(), state()).of(getGraphicalViewer().getSelectedEditParts())
                : PlanText.deleted;
    }

    /** Shows the dimensions of the walls that are selected, or whose openings are. */
    private void chosen() {
        selected().measured().filter(view::measure).ifPresent(walls -> refreshSoon());
        say(words(), false);
    }

    /** Later, for parts that go deselect themselves while others are being refreshed. */
    private void refreshSoon() {
        paper.getDisplay().asyncExec(() -> {
            if (!paper.isDisposed()) {
                refreshParts();
            }
        });
    }

    @Override
    public void dispose() {
        if (listening != null) {
            listening.end();
        }
        super.dispose();
    }
}
