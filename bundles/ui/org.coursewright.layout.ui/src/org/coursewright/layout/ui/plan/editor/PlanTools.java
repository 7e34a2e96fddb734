package org.coursewright.layout.ui.plan.editor;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Supplier;

import org.coursewright.layout.ui.plan.tool.DrawWallTool;
import org.coursewright.layout.ui.plan.tool.PlaceOpeningTool;
import org.coursewright.model.building.OpeningKind;
import org.eclipse.gef.EditDomain;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.Tool;

/** The tools of a plan, by their kinds. */
final class PlanTools {

    private final EditDomain domain;
    private final Map<Kind, Supplier<Tool>> tools = new LinkedHashMap<>();
    private Kind active = Kind.SELECT;
    private Tool taken;

    /** What can be done with the mouse. */
    enum Kind {
        SELECT, WALL, DOOR, WINDOW
    }

    PlanTools(EditDomain domain, GraphicalViewer viewer, BiConsumer<String, Boolean> say) {
        this.domain = domain;
        tools.put(Kind.WALL, () -> new DrawWallTool(viewer, say));
        tools.put(Kind.DOOR, () -> new PlaceOpeningTool(viewer, OpeningKind.DOOR, say));
        tools.put(Kind.WINDOW, () -> new PlaceOpeningTool(viewer, OpeningKind.WINDOW, say));
    }

    /** Takes up a tool. */
    void take(Kind kind) {
        if (kind == Kind.SELECT) {
            domain.loadDefaultTool();
            return;
        }
        Tool tool = tools.get(kind).get();
        active = kind;
        taken = tool;
        domain.setActiveTool(tool);
    }

    /** The tool that is taken up at present. */
    Kind active() {
        return taken != null && domain.getActiveTool() == taken ? active : Kind.SELECT;
    }
}
