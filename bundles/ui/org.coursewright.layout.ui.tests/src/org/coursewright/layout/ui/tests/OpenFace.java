package org.coursewright.layout.ui.tests;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.layout.ui.editor.WallFaceEditor;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.part.OpeningPart;
import org.coursewright.layout.ui.part.WallPart;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;

/** A project that is open in the window, with the face of one of its walls in an editor. */
final class OpenFace {

    private static final String BUNDLE = "org.coursewright.workbench";
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    /** Milliseconds between two looks while there are no events; the work that is waited for has the processor meanwhile. */
    private static final int EVERY = 5;

    private final Wall wall;
    private final WallFaceEditor editor;

    private OpenFace(Wall wall, WallFaceEditor editor) {
        this.wall = wall;
        this.editor = editor;
    }

    /** Opens a project, selects a wall in the navigator and opens it, as a double-click does. */
    static OpenFace of(Path file, String mark) throws CommandException, PartInitException {
        run(BUNDLE + ".openProject", Map.of(BUNDLE + ".openProject.file", file.toString()));
        Wall wall = walls().stream().filter(each -> each.getMark().equals(mark)).findFirst().orElseThrow();
        page().showView(BUNDLE + ".navigator").getSite().getSelectionProvider().setSelection(
                new StructuredSelection(wall));
        settle();
        run(BUNDLE + ".openElement", Map.of());
        return new OpenFace(wall, (WallFaceEditor) page().getActiveEditor());
    }

    /** The same, and waits until the wall is shown as it is laid. */
    static OpenFace laidOf(Path file, String mark) throws CommandException, PartInitException {
        OpenFace face = of(file, mark);
        await(() -> face.wallPart().face().pieces() == face.laid().count().total());
        return face;
    }

    static void closeAll() {
        PlatformUI.getWorkbench().getService(OpenProjects.class).closeAll();
        settle();
    }

    private static List<Wall> walls() {
        return active().map(ProjectSession::project).orElseThrow().getBuilding().getStoreys().stream()
                .flatMap(storey -> storey.getWalls().stream())
                .toList();
    }

    private static void run(String id, Map<String, String> parameters) throws CommandException {
        ParameterizedCommand command = ParameterizedCommand.generateCommand(
                PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(id), parameters);
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
        settle();
    }

    static void command(String id) throws CommandException {
        run(id, Map.of());
    }

    static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    }

    static Optional<ProjectSession> active() {
        return PlatformUI.getWorkbench().getService(OpenProjects.class).active();
    }

    private static Optional<LayoutOutcome> outcome() {
        return active().flatMap(session -> session.derived().state(ProjectResults.LAYOUT).value());
    }

    WallFaceEditor editor() {
        return editor;
    }

    Wall wall() {
        return wall;
    }

    GraphicalViewer viewer() {
        return (GraphicalViewer) editor.getAdapter(GraphicalViewer.class);
    }

    WallPart wallPart() {
        return (WallPart) viewer().getContents();
    }

    OpeningPart part(Opening opening) {
        return (OpeningPart) viewer().getEditPartRegistry().get(opening);
    }

    Opening opening(String mark) {
        return wall.getOpenings().stream().filter(each -> each.getMark().equals(mark)).findFirst().orElseThrow();
    }

    /** How the building is laid, of the project as it is now; waits for it. */
    LayoutOutcome layout() {
        await(() -> outcome().isPresent());
        settle();
        return outcome().orElseThrow();
    }

    /** How the wall is laid, of the project as it is now; waits for it. */
    FaceDrawing laid() {
        return FaceDrawing.of(wall, layout()).orElseThrow();
    }

    /** Does what a window does meanwhile: sleeps until there is an event, and looks at least every few milliseconds. */
    static void await(BooleanSupplier happened) {
        Runnable look = new Look(Display.getCurrent());
        look.run();
        try {
            awaitLooking(happened);
        } finally {
            Display.getCurrent().timerExec(-1, look);
        }
    }

    private static void awaitLooking(BooleanSupplier happened) {
        Instant end = Instant.now().plus(PATIENCE);
        while (!happened.getAsBoolean()) {
            if (Instant.now().isAfter(end)) {
                throw new AssertionError("It has not happened within " + PATIENCE + ".");
            }
            if (!Display.getCurrent().readAndDispatch()) {
                Display.getCurrent().sleep();
            }
        }
    }

    /** Wakes a window that sleeps, again and again. */
    private record Look(Display display) implements Runnable {

        @Override
        public void run() {
            display.timerExec(EVERY, this);
        }
    }

    /** Lets time pass for the window. */
    static void pause(Duration length) {
        Instant end = Instant.now().plus(length);
        await(() -> Instant.now().isAfter(end));
    }

    static void settle() {
        Display display = Display.getCurrent();
        while (display.readAndDispatch()) {
            continue;
        }
    }
}
