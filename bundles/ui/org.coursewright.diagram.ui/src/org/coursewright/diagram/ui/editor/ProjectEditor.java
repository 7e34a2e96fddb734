package org.coursewright.diagram.ui.editor;

import org.eclipse.ui.ISaveablesSource;
import org.eclipse.ui.Saveable;

/** An editor that shows an open project or part of it. It has no unsaved state of its own; it saves the project. */
public interface ProjectEditor extends ISaveablesSource {

    /** @return the project that is shown */
    ShownProject shown();

    @Override
    default Saveable[] getSaveables() {
        return new Saveable[]{shown().saveable()};
    }

    @Override
    default Saveable[] getActiveSaveables() {
        return getSaveables();
    }
}
