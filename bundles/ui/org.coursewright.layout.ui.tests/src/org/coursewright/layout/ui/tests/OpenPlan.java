package org.coursewright.layout.ui.tests;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.editor.PlanEditor;
import org.coursewright.layout.ui.plan.part.DimensionPart;
import org.coursewright.layout.ui.plan.part.PlanOpeningPart;
import org.coursewright.layout.ui.plan.part.PlanWallPart;
import org.coursewright.layout.ui.plan.part.StoreyPart;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;

/** A project that is open in the window with the plan of its first storey in an editor; driven as people drive it. */
final class OpenPlan {

    private static final String BUNDLE = "org.coursewright.workbench";
    private static final Duration PATIENCE = Duration.ofSeconds(180);

    private final PlanEditor editor;

    private OpenPlan(PlanEditor editor) {
        this.editor = editor;
    }

    static OpenPlan of(Path file) throws Exception {
        run(BUNDLE + ".openProject", Map.of(BUNDLE + ".openProject.file", file.toString()));
        page().showView(BUNDLE + ".navigator").getSite().getSelectionProvider().setSelection(
                new StructuredSelection(project().getBuilding().getStoreys().get(0)));
        settle();
        run(BUNDLE + ".openElement", Map.of());
        OpenPlan plan = new OpenPlan((PlanEditor) page().getActiveEditor());
        page().setPartState(page().getReference(plan.editor), IWorkbenchPage.STATE_MAXIMIZED);
        settle();
        return plan;
    }

    static void closeAll() {
        PlatformUI.getWorkbench().getService(OpenProjects.class).closeAll();
        settle();
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

    static Project project() {
        return PlatformUI.getWorkbench().getService(OpenProjects.class).active().map(ProjectSession::project)
                .orElseThrow();
    }

    static void settle() {
        while (Display.getCurrent().readAndDispatch()) {
            continue;
        }
    }

    static void await(BooleanSupplier happened) {
        Instant end = Instant.now().plus(PATIENCE);
        while (!happened.getAsBoolean()) {
            if (Instant.now().isAfter(end)) {
                throw new AssertionError("It has not happened within " + PATIENCE + ".");
            }
            settle();
        }
    }

    PlanEditor editor() {
        return editor;
    }

    GraphicalViewer viewer() {
        return (GraphicalViewer) editor.getAdapter(GraphicalViewer.class);
    }

    StoreyPart storeyPart() {
        return (StoreyPart) viewer().getContents();
    }

    Storey storey() {
        return storeyPart().element();
    }

    Wall wall(String mark) {
        return storey().getWalls().stream().filter(each -> mark.equals(each.getMark())).findFirst().orElseThrow();
    }

    Opening opening(String mark) {
        return storey().getWalls().stream().flatMap(wall -> wall.getOpenings().stream())
                .filter(each -> mark.equals(each.getMark())).findFirst().orElseThrow();
    }

    PlanWallPart part(Wall wall) {
        return (PlanWallPart) viewer().getEditPartRegistry().get(wall);
    }

    PlanOpeningPart part(Opening opening) {
        return (PlanOpeningPart) viewer().getEditPartRegistry().get(opening);
    }

    List<DimensionPart> dimensions() {
        List<DimensionPart> found = new ArrayList<>();
        for (EditPart part : storeyPart().childParts()) {
            if (part instanceof DimensionPart dimension) {
                found.add(dimension);
            }
        }
        return found;
    }

    /** The pixel of the window at which a point of the plan is. */
    Point pixel(PlanPoint point) {
        Point pixel = editor.state().place(DiagramScale.of(viewer())).pixel(point);
        storeyPart().getFigure().translateToAbsolute(pixel);
        return pixel;
    }

    static PlanPoint inches(long x, long y) {
        return new PlanPoint(Length.ofInches(x), Length.ofInches(y));
    }

    void click(Point at) {
        mouse(SWT.MouseMove, at, 0, 0);
        mouse(SWT.MouseDown, at, 1, 0);
        mouse(SWT.MouseUp, at, 1, SWT.BUTTON1);
        settle();
    }

    void move(Point at) {
        mouse(SWT.MouseMove, at, 0, 0);
        settle();
    }

    void drag(Point from, int right, int down, int held) {
        mouse(SWT.MouseMove, from, 0, held);
        mouse(SWT.MouseDown, from, 1, held);
        mouse(SWT.MouseMove, from.getTranslated(right / 2, down / 2), 0, SWT.BUTTON1 | held);
        mouse(SWT.MouseMove, from.getTranslated(right, down), 0, SWT.BUTTON1 | held);
        mouse(SWT.MouseUp, from.getTranslated(right, down), 1, SWT.BUTTON1 | held);
        settle();
    }

    private void mouse(int type, Point at, int button, int held) {
        Event event = new Event();
        event.x = at.x;
        event.y = at.y;
        event.button = button;
        event.count = 1;
        event.stateMask = held;
        viewer().getControl().notifyListeners(type, event);
    }

    void key(int keyCode, char character, int held) {
        Event event = new Event();
        event.keyCode = keyCode;
        event.character = character;
        event.stateMask = held;
        viewer().getControl().notifyListeners(SWT.KeyDown, event);
        settle();
    }

    /** Presses a button of the editor's header. */
    void press(String text) {
        Button button = controls().filter(Button.class::isInstance).map(Button.class::cast)
                .filter(each -> each.getText().replace("&", "").equals(text)).findFirst().orElseThrow();
        if ((button.getStyle() & (SWT.TOGGLE | SWT.CHECK)) != 0) {
            button.setSelection(!button.getSelection());
        }
        button.notifyListeners(SWT.Selection, new Event());
        settle();
    }

    boolean isPressed(String text) {
        return controls().filter(Button.class::isInstance).map(Button.class::cast)
                .anyMatch(each -> each.getText().replace("&", "").equals(text) && each.getSelection());
    }

    List<Combo> combos() {
        return controls().filter(Combo.class::isInstance).map(Combo.class::cast).toList();
    }

    boolean says(String part) {
        return controls().filter(Label.class::isInstance).anyMatch(each -> ((Label) each).getText().contains(part));
    }

    private Stream<Control> controls() {
        return in(viewer().getControl().getParent().getParent().getParent());
    }

    private static Stream<Control> in(Control root) {
        return root instanceof Composite composite
                ? Stream.concat(Stream.of(root), Stream.of(composite.getChildren()).flatMap(OpenPlan::in))
                : Stream.of(root);
    }
}
