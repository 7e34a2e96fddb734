package org.coursewright.layout.ui.plan.editor;

import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.Tool;
import org.eclipse.ui.IEditorPart;

/** Tells which tool is taken up; selecting, with the space bar for panning, if no other is. */
final class PlanDomain extends DefaultEditDomain {

    private Runnable toolChanged = () -> {
        /* nobody to be told yet */ };

    PlanDomain(IEditorPart editor) {
        super(editor);
        setDefaultTool(new SelectingTool());
        loadDefaultTool();
    }

    void onToolChange(Runnable told) {
        toolChanged = told;
    }

    @Override
    public void setActiveTool(Tool tool) {
        super.setActiveTool(tool);
        if (toolChanged != null) { // the framework calls this while it is still being made
            toolChanged.run();
        }
    }
}
