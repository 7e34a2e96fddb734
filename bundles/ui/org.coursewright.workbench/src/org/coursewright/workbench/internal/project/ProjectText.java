package org.coursewright.workbench.internal.project;

import org.eclipse.osgi.util.NLS;

/** What is said about whole projects. */
final class ProjectText extends NLS {

    public static String chooseFile;
    public static String projectFiles;
    public static String allFiles;
    public static String cannotOpen;
    public static String cannotSave;
    public static String inUse;
    public static String notRemembered;
    public static String undo;
    public static String undoWhat;
    public static String redo;
    public static String redoWhat;
    public static String save;

    static {
        NLS.initializeMessages(ProjectText.class.getPackageName() + ".messages", ProjectText.class);
    }

    private ProjectText() {
    }
}
