package org.coursewright.layout.ui.editor;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

import org.coursewright.bond.Piece;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.diagram.ui.editor.ElementInput;
import org.coursewright.layout.ui.face.MarkedPieces;
import org.coursewright.model.building.Wall;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the face of a wall of the active project and marks the pieces that the command's parameters name. */
public final class ShowPiecesHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        MarkedPieces marked = marked(event);
        Optional<ElementInput> input = window.getService(OpenProjects.class).active().flatMap(session -> wall(session,
                event.getParameter(WorkbenchIds.SHOW_PIECES_WALL)).map(wall -> new ElementInput(session, wall)));
        if (input.isPresent()) {
            open(window, input.get(), marked);
        }
        return null;
    }

    private static void open(IWorkbenchWindow window, ElementInput wall, MarkedPieces marked)
            throws ExecutionException {
        try {
            ((WallFaceEditor) window.getActivePage().openEditor(wall, WallFaceEditor.ID)).mark(Optional.of(marked));
        } catch (PartInitException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
    }

    private static Optional<Wall> wall(ProjectSession session, String mark) {
        return Optional.ofNullable(session.project().getBuilding()).stream().flatMap(building -> building.getStoreys()
                .stream()).flatMap(storey -> storey.getWalls().stream()).filter(wall -> mark.equals(wall.getMark()))
                .findFirst();
    }

    private static MarkedPieces marked(ExecutionEvent event) throws ExecutionException {
        try {
            return new MarkedPieces(Optional.ofNullable(event.getParameter(WorkbenchIds.SHOW_PIECES_KIND)).map(
                    kind -> Piece.Kind.valueOf(kind.toUpperCase(Locale.ROOT))),
                    Optional.ofNullable(event.getParameter(WorkbenchIds.SHOW_PIECES_COURSE)).map(course -> OptionalInt
                            .of(Integer.parseInt(course))).orElse(OptionalInt.empty()));
        } catch (IllegalArgumentException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
    }
}
