package org.coursewright.workbench;

/** Ids under which the parts and commands of the workbench are registered. */
public final class WorkbenchIds {

    /** The bundle. */
    public static final String BUNDLE = "org.coursewright.workbench";

    /** The perspective in which a building is planned. */
    public static final String PLANNING = BUNDLE + ".planning";

    /** The perspective in which it is taken off and priced. */
    public static final String COSTING = BUNDLE + ".costing";

    /** The perspective in which its work is put in order of time. */
    public static final String TIMING = BUNDLE + ".timing";

    /** The perspective in which what it needs is ordered and counted. */
    public static final String SUPPLYING = BUNDLE + ".supplying";

    /** The editor that greets whoever has no project open, and the command that shows it. */
    public static final String WELCOME = BUNDLE + ".welcome";

    /** The command that opens the demo. */
    public static final String OPEN_DEMO = BUNDLE + ".openDemo";

    /** The view of all open projects and their elements. */
    public static final String NAVIGATOR = BUNDLE + ".navigator";

    /** The view in which the values of the selected element are read and edited. */
    public static final String PROPERTIES = BUNDLE + ".properties";

    /** The view of what is wrong or doubtful in the open projects. */
    public static final String FINDINGS = BUNDLE + ".findings";

    /** The command that opens a project. */
    public static final String OPEN_PROJECT = BUNDLE + ".openProject";

    /** The parameter of {@link #OPEN_PROJECT} with the path of the file; without it the command asks for a file. */
    public static final String OPEN_PROJECT_FILE = OPEN_PROJECT + ".file";

    /** The type of the markers for findings: problem markers, which are not kept when the workbench is closed. */
    public static final String FINDING_MARKER = BUNDLE + ".finding";

    /** Their attribute with the stable name of the kind of finding, such as {@code opening.beyond-wall}. */
    public static final String FINDING_CODE = "code";

    /** Their attribute with the id of the element in the project file; absent if they are about no single element. */
    public static final String FINDING_ELEMENT = "element";

    /** The view of what the active editor shows. */
    public static final String OUTLINE = BUNDLE + ".outline";

    /** The view of all edits of the active project. */
    public static final String HISTORY = BUNDLE + ".history";

    /** The command that writes files of the active project. */
    public static final String EXPORT = BUNDLE + ".export";

    /** The parameter of {@link #EXPORT} that says what to write: the name of the headless command that writes it. */
    public static final String EXPORT_KIND = EXPORT + ".kind";

    /** The parameter of {@link #EXPORT} with the file or folder to write to; without it the command asks for one. */
    public static final String EXPORT_TARGET = EXPORT + ".target";

    /**
     * The command that opens the selected element in its editor; the navigator executes it on a double-click and on Enter. A
     * plug-in with an editor declares a handler that is active while an element of its kind is selected.
     */
    public static final String OPEN_ELEMENT = BUNDLE + ".openElement";

    /**
     * The command that shows pieces of one wall of the active project, marked among all others. Whoever takes walls off
     * executes it; a plug-in that draws walls has its handler, and without one the command is disabled.
     */
    public static final String SHOW_PIECES = BUNDLE + ".showPieces";

    /** The parameter of {@link #SHOW_PIECES} with the mark of the wall. */
    public static final String SHOW_PIECES_WALL = SHOW_PIECES + ".wall";

    /** The parameter of {@link #SHOW_PIECES} that says which: {@code whole}, {@code special} or {@code cut}; all without. */
    public static final String SHOW_PIECES_KIND = SHOW_PIECES + ".kind";

    /** The parameter of {@link #SHOW_PIECES} with the number of the only course that is meant; every course without. */
    public static final String SHOW_PIECES_COURSE = SHOW_PIECES + ".course";

    private WorkbenchIds() {
    }
}
