package org.coursewright.workbench;

/** Ids under which the parts of the workbench are registered. */
public final class WorkbenchIds {

    /** The perspective in which a building is planned. */
    public static final String PLANNING = "org.coursewright.workbench.planning";

    /** The view of all open projects and their elements. */
    public static final String NAVIGATOR = "org.coursewright.workbench.navigator";

    /** The command that asks for a project file and opens it. */
    public static final String OPEN_PROJECT = "org.coursewright.workbench.openProject";

    private WorkbenchIds() {
    }
}
