package org.coursewright.layout.ui.editor;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.coursewright.core.display.ProjectFormat;
import org.coursewright.diagram.ui.editor.DiagramEditor;
import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.face.MarkedPieces;
import org.coursewright.layout.ui.face.PieceWalk;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.handing.HandingWords;
import org.coursewright.layout.ui.paint.FaceInk;
import org.coursewright.layout.ui.part.FaceParts;
import org.coursewright.layout.ui.part.FaceState;
import org.coursewright.layout.ui.part.FaceTrial;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.EditPart;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchPart;

/** Shows one wall from its face, with every piece and joint, and lets its openings be dragged. */
public final class WallFaceEditor extends DiagramEditor {

    /** Under which the editor is registered. */
    public static final String ID = "org.coursewright.layout.ui.wallFace";

    private WallLaying laying;
    private FaceHeader header;
    private FaceStack stack;
    private FaceFit fit;
    private MarkedLine markedLine;
    private FaceTrials trials;
    private PlaceStrip strip;
    private Unfolding unfolding;
    private Optional<PlacedPiece> selected = Optional.empty();
    private Optional<MarkedPieces> marked = Optional.empty();
    private int upTo = Integer.MAX_VALUE;

    private Wall wall() {
        return (Wall) element();
    }

    @Override
    public void createPartControl(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        header = new FaceHeader(parent, this::layUpTo, this::unfold, this::fit, this::export);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(header);
        markedLine = new MarkedLine(parent, () -> mark(Optional.empty()));
        stack = new FaceStack(parent);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(stack);
        Executor display = parent.getDisplay()::asyncExec;
        laying = new WallLaying(wall(), results(), display, this::laid);
        trials = new FaceTrials(wall(), laying, new FaceTrials.Surroundings(display, LengthStep.of(format().unit()),
                this::showLaying, this::showStrip));
        unfolding = new Unfolding(wall(), beside -> OpenWallFaceHandler.open(getSite().getPage(), session(), beside));
        super.createPartControl(stack);
        strip = new PlaceStrip(parent, trials, getCommandStack()::execute);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(strip.control());
        strip.follow(getGraphicalViewer());
        Legend legend = new Legend(parent, faceInk());
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(legend);
        showLaying();
    }

    @Override
    protected void configureGraphicalViewer() {
        super.configureGraphicalViewer();
        getGraphicalViewer().setEditPartFactory(new FaceParts(this::state, trials));
        FaceMenu menu = new FaceMenu(getGraphicalViewer(), wall(), () -> selected, laying::outcome,
                new FaceMenu.Edits(getActionRegistry(), this::format, this::execute));
        getGraphicalViewer().setContextMenu(menu);
        getGraphicalViewer().setKeyHandler(new FaceKeys(getGraphicalViewer(), this::fit, this::walk, menu));
        fit = new FaceFit(getGraphicalViewer(), () -> state().extent(), this::refreshParts);
        new PieceHints(getGraphicalViewer(), this::state, this::select).connect();
        unfolding.follow(getGraphicalViewer());
        AccessibleName.give(getGraphicalViewer().getControl(), this::spoken);
    }

    @Override
    protected void initializeGraphicalViewer() {
        getGraphicalViewer().setContents(wall());
    }

    private FaceState state() {
        Optional<FaceTrial> trial = trials.tried();
        Optional<FaceDrawing> drawing = trial.flatMap(FaceTrial::drawing).or(laying::drawing);
        int courses = drawing.map(each -> each.courses().size()).orElse(0);
        return new FaceState(drawing, faceInk(), format(), Math.min(upTo, courses), selected, marked,
                getGraphicalViewer().getControl().getSize().y, unfolding.links(), trial);
    }

    /** Shows the walls round the corners beside this one, or only this one. */
    private void unfold(boolean shown) {
        unfolding.show(shown);
        showLaying();
        fit.now();
    }

    private FaceInk faceInk() {
        return FaceInk.with(ink());
    }

    private LengthFormat format() {
        return ProjectFormat.of(project());
    }

    private PieceWords words() {
        return new PieceWords(format(), state().drawing());
    }

    private String spoken() {
        String piece = selected.map(words()::of).orElse("");
        String corners = state().drawing().map(FaceDrawing::corners).stream()
                .flatMap(each -> Stream.of(each.start(), each.end())).flatMap(Optional::stream)
                .map(HandingWords::of).collect(Collectors.joining("\n"));
        return String.join("\n", NLS.bind(EditorText.accessibleFace, wall().getMark()), piece, corners);
    }

    private void showLaying() {
        unfolding.laid(laying.outcome().filter(laid -> isElementThere()));
        Control canvas = getGraphicalViewer().getControl();
        FaceState state = state();
        header.show(state.drawing(), state.upTo(), laying.isStale());
        stack.show(hint(), canvas);
        markedLine.show(marked, markedPieces());
        refreshParts();
        showStrip();
        fit.again();
    }

    private void laid() {
        trials.laid();
        showLaying();
    }

    private void showStrip() {
        strip.show(faceInk(), format());
    }

    /** Makes an edit, or says in the status line why it cannot be made. */
    private void execute(ProjectCommand edit) {
        edit.refusal().ifPresentOrElse(
                refusal -> getEditorSite().getActionBars().getStatusLineManager().setErrorMessage(refusal.reason()),
                () -> getCommandStack().execute(new EditCommand(edit)));
    }

    private String hint() {
        if (!isElementThere()) {
            return EditorText.deleted;
        }
        if (laying.failure().isPresent()) {
            return NLS.bind(EditorText.failed, laying.failure().get());
        }
        if (laying.isLeftOut()) {
            return EditorText.leftOut;
        }
        if (laying.drawing().isEmpty()) {
            return EditorText.laying;
        }
        return laying.drawing().get().courses().isEmpty() ? EditorText.noCourses : "";
    }

    @Override
    protected void edited() {
        super.edited();
        showLaying();
    }

    @Override
    protected void fit() {
        fit.now();
    }

    private void layUpTo(int course) {
        upTo = course;
        refreshParts();
    }

    private void export() {
        laying.drawing().ifPresent(drawing -> new PictureExport(getSite().getShell()).ask(drawing, format()));
    }

    private void select(Optional<PlacedPiece> piece) {
        selected = piece;
        getEditorSite().getActionBars().getStatusLineManager().setMessage(
                piece.map(words()::of).map(words -> words.replace("\n", ". ")).orElse(""));
        refreshParts();
    }

    /**
     * Marks pieces among all others, until others are marked or the marks are taken away.
     *
     * @param pieces which, empty for none
     */
    public void mark(Optional<MarkedPieces> pieces) {
        marked = pieces;
        showLaying();
    }

    /** @return how many pieces are marked */
    public long markedPieces() {
        return laying.drawing().stream().flatMap(drawing -> marked.stream().flatMap(each -> each.in(drawing))).count();
    }

    private void walk(int pieces, int courses) {
        laying.drawing().map(PieceWalk::new).ifPresent(walk -> select(selected.map(piece -> pieces == 0
                ? walk.up(piece, courses).orElse(piece)
                : walk.along(piece, pieces).orElse(piece)).or(walk::first)));
    }

    /** Selects what has been selected in another part, if it is shown here. */
    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        super.selectionChanged(part, selection);
        if (part != this && selection instanceof IStructuredSelection structured && structured.size() == 1) {
            EObject chosen = Adapters.adapt(structured.getFirstElement(), EObject.class);
            if (getGraphicalViewer().getEditPartRegistry().get(chosen) instanceof EditPart shown) {
                getGraphicalViewer().select(shown);
            }
        }
    }

    @Override
    public void setFocus() {
        super.setFocus();
        select(selected);
    }

    @Override
    public void dispose() {
        if (laying != null) {
            trials.end();
            laying.end();
        }
        super.dispose();
    }
}
