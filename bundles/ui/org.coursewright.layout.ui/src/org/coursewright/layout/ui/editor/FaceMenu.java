package org.coursewright.layout.ui.editor;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.handing.HandingMenu;
import org.coursewright.layout.ui.pin.PiecePins;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.LengthFormatException;
import org.coursewright.model.building.Wall;
import org.coursewright.model.building.WallPlace;
import org.coursewright.model.edit.command.ProjectCommand;
import org.eclipse.gef.ContextMenuProvider;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.actions.ActionFactory;

/** What can be decided about the piece that is selected, its run, and the corners of the wall; also by keys. */
final class FaceMenu extends ContextMenuProvider {

    private final Wall wall;
    private final Supplier<Optional<PlacedPiece>> selected;
    private final Supplier<Optional<LayoutOutcome>> laid;
    private final Edits edits;

    /**
     * What edits are made with.
     *
     * @param registry with undo, redo and delete
     * @param format of lengths
     * @param execute makes an edit, or says why it cannot be made
     */
    record Edits(ActionRegistry registry, Supplier<LengthFormat> format, Consumer<ProjectCommand> execute) {
    }

    FaceMenu(EditPartViewer viewer, Wall wall, Supplier<Optional<PlacedPiece>> selected,
            Supplier<Optional<LayoutOutcome>> laid, Edits edits) {
        super(viewer);
        this.wall = wall;
        this.selected = selected;
        this.laid = laid;
        this.edits = edits;
    }

    @Override
    public void buildContextMenu(IMenuManager menu) {
        menu.add(edits.registry().getAction(ActionFactory.UNDO.getId()));
        menu.add(edits.registry().getAction(ActionFactory.REDO.getId()));
        menu.add(new Separator());
        menu.add(action(EditorText.pinPiece, pins().isPresent(), this::pinPiece));
        menu.add(action(EditorText.pinJoint, pins().flatMap(PiecePins::joint).isPresent(), this::pinJoint));
        menu.add(action(EditorText.unpin, pins().filter(each -> !each.inRun().isEmpty()).isPresent(), this::unpin));
        menu.add(new Separator());
        handing().ifPresent(corners -> corners.addTo(menu));
        menu.add(new Separator());
        menu.add(edits.registry().getAction(ActionFactory.DELETE.getId()));
    }

    private static Action action(String text, boolean enabled, Runnable run) {
        Action action = new Action(text) {

            @Override
            public void run() {
                run.run();
            }
        };
        action.setEnabled(enabled);
        return action;
    }

    private Optional<PiecePins> pins() {
        return selected.get().map(piece -> new PiecePins(wall, piece));
    }

    private Optional<HandingMenu> handing() {
        return laid.get().map(outcome -> new HandingMenu(wall, outcome, edits.execute()));
    }

    /** Keeps the selected piece as it is. */
    void pinPiece() {
        pins().ifPresent(each -> edits.execute().accept(each.keepPiece()));
    }

    /** Leaves the selected piece's run to the layout. */
    void unpin() {
        pins().ifPresent(each -> edits.execute().accept(each.leave()));
    }

    /** Asks for the joint of the selected piece's run, and keeps it. */
    void pinJoint() {
        pins().ifPresent(each -> each.joint().flatMap(this::askJoint)
                .ifPresent(joint -> edits.execute().accept(each.keepJoint(joint))));
    }

    /** Lets the next wall run through at an end of this one. */
    void nextHanding(WallPlace place) {
        handing().ifPresent(each -> each.next(place));
    }

    private Optional<Length> askJoint(Length now) {
        LengthFormat format = edits.format().get();
        InputDialog dialog = new InputDialog(getViewer().getControl().getShell(), EditorText.pinJointTitle,
                NLS.bind(EditorText.pinJointAsk, selected.get().map(PlacedPiece::course).orElse(0)),
                format.formatExact(now), typed -> whyNot(format, typed));
        return dialog.open() == Window.OK ? Optional.of(format.parse(dialog.getValue())) : Optional.empty();
    }

    /** @return what is wrong with a length, null if nothing is, as the dialog asks for it */
    private static String whyNot(LengthFormat format, String typed) {
        try {
            return format.parse(typed).signum() < 0 ? NLS.bind(EditorText.notAJoint, typed) : null;
        } catch (LengthFormatException e) {
            return e.getMessage();
        }
    }
}
