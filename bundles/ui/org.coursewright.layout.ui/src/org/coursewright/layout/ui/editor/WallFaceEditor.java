package org.coursewright.layout.ui.editor;

import java.util.Optional;
import java.util.concurrent.Executor;

import org.coursewright.core.display.ProjectFormat;
import org.coursewright.diagram.ui.editor.DiagramEditor;
import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.face.MarkedPieces;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.paint.FaceInk;
import org.coursewright.layout.ui.paint.FacePicture;
import org.coursewright.layout.ui.part.FaceParts;
import org.coursewright.layout.ui.part.FaceState;
import org.coursewright.layout.ui.part.FaceTrial;
import org.coursewright.layout.ui.picture.PictureExport;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Shows one wall from its face, with every piece and joint, and lets its openings be dragged. */
public final class WallFaceEditor extends DiagramEditor {

    /** Under which the editor is registered. */
    public static final String ID = "org.coursewright.layout.ui.wallFace";

    /** How the height is shared between the wall and the strip under it, until somebody moves the sash. */
    private static final int WALL = 77;
    private static final int STRIP = 23;

    private final FaceView view = new FaceView();
    private WallLaying laying;
    private FaceHeader header;
    private FaceStack stack;
    private FaceFit fit;
    private MarkedLine markedLine;
    private FaceTrials trials;
    private PlaceStrip strip;
    private Unfolding unfolding;

    private Wall wall() {
        return (Wall) element();
    }

    @Override
    public void createPartControl(Composite parent) {
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
        header = new FaceHeader(parent, new Wishes());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(header);
        markedLine = new MarkedLine(parent, () -> mark(Optional.empty()));
        SashForm sash = new SashForm(parent, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        stack = new FaceStack(sash);
        Executor display = parent.getDisplay()::asyncExec;
        laying = new WallLaying(wall(), results(), display, this::laid);
        trials = new FaceTrials(wall(), laying, new FaceTrials.Surroundings(display, LengthStep.of(format().unit()),
                this::showTried, this::showStrip));
        unfolding = new Unfolding(wall(), beside -> OpenWallFaceHandler.open(getSite().getPage(), session(), beside));
        super.createPartControl(stack);
        strip = new PlaceStrip(sash, trials, getCommandStack()::execute);
        sash.setWeights(WALL, STRIP);
        strip.follow(getGraphicalViewer());
        Legend legend = new Legend(parent, faceInk());
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(legend);
        showLaying();
    }

    @Override
    protected void configureGraphicalViewer() {
        super.configureGraphicalViewer();
        getGraphicalViewer().setEditPartFactory(new FaceParts(this::state, trials));
        FaceMenu menu = new FaceMenu(getGraphicalViewer(), wall(), view::selected, laying::outcome,
                new FaceMenu.Edits(getActionRegistry(), this::format, this::execute));
        getGraphicalViewer().setContextMenu(menu);
        getGraphicalViewer().setKeyHandler(new FaceKeys(getGraphicalViewer(), this::fit, this::walk, menu));
        fit = new FaceFit(getGraphicalViewer(), () -> state().extent(), () -> laying.drawing()
                .flatMap(drawing -> drawing.course(1)).map(course -> course.course().height()), this::refreshParts);
        new PieceHints(getGraphicalViewer(), this::state, this::select).connect();
        unfolding.follow(getGraphicalViewer());
        AccessibleName.give(getGraphicalViewer().getControl(), () -> new FaceWords(state()).spoken(wall().getMark()));
    }

    @Override
    protected void initializeGraphicalViewer() {
        getGraphicalViewer().setContents(wall());
    }

    private FaceState state() {
        Optional<FaceTrial> trial = trials.tried();
        Optional<FaceDrawing> drawing = trial.flatMap(FaceTrial::drawing).or(laying::drawing);
        return new FaceState(drawing, faceInk(), format(), view.upTo(drawing), view.selected(), view.marked(),
                view.gauges(), getGraphicalViewer().getControl().getSize().y, unfolding.links(), trial);
    }

    /** What is asked for above the wall. */
    private final class Wishes implements FaceHeader.Wishes {

        @Override
        public void layUpTo(int course) {
            view.layUpTo(course);
            select(view.selected());
        }

        @Override
        public void unfold(boolean shown) {
            unfolding.show(shown);
            showLaying();
            fit.now();
        }

        @Override
        public void gauges(boolean written) {
            view.gauges(written);
            fit.forWords(written);
            refreshParts();
        }

        @Override
        public void fit() {
            fit.now();
        }

        @Override
        public void export() {
            laying.drawing().ifPresent(drawing -> new PictureExport(getSite().getShell()).ask(
                    new FacePicture(drawing, format()), EditorText.exportTitle, drawing.layout().mark()));
        }
    }

    private FaceInk faceInk() {
        return FaceInk.with(ink());
    }

    private LengthFormat format() {
        return ProjectFormat.of(project());
    }

    private void showLaying() {
        unfolding.laid(laying.outcome().filter(laid -> isElementThere()));
        stack.show(FaceWords.hint(laying, isElementThere()), getGraphicalViewer().getControl());
        markedLine.show(view.marked(), markedPieces());
        showFace();
        fit.again();
    }

    private void showFace() {
        FaceState state = state();
        header.show(state.drawing(), state.upTo(), laying.isStale());
        refreshParts();
        showStrip();
    }

    /** What is tried is painted with the window's next frame; left to itself, the canvas would come a frame after the rest. */
    private void showTried() {
        showFace();
        ((FigureCanvas) getGraphicalViewer().getControl()).getLightweightSystem().getUpdateManager().performUpdate();
    }

    private void laid() {
        trials.laidAnew();
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

    @Override
    protected void edited() {
        super.edited();
        showLaying();
    }

    @Override
    protected void fit() {
        fit.now();
    }

    private void select(Optional<PlacedPiece> piece) {
        view.select(piece);
        FaceWords words = new FaceWords(state());
        getEditorSite().getActionBars().getStatusLineManager().setMessage(
                piece.map(words::of).map(each -> each.replace("\n", ". ")).orElse(""));
        refreshParts();
    }

    /**
     * Marks pieces among all others, until others are marked or the marks are taken away.
     *
     * @param pieces which, empty for none
     */
    public void mark(Optional<MarkedPieces> pieces) {
        view.mark(pieces);
        showLaying();
    }

    /** @return how many pieces are marked */
    public long markedPieces() {
        return laying.drawing().map(view::markedIn).orElse(0L);
    }

    private void walk(int pieces, int courses) {
        laying.drawing().ifPresent(drawing -> select(view.walked(drawing, pieces, courses)));
    }

    @Override
    public void setFocus() {
        super.setFocus();
        select(view.selected());
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
