package org.coursewright.diagram.ui.editor;

import org.eclipse.osgi.util.NLS;

/** What editors of diagrams say. */
final class DiagramText extends NLS {

    public static String notAnElement;

    static {
        NLS.initializeMessages(DiagramText.class.getPackageName() + ".messages", DiagramText.class);
    }

    private DiagramText() {
    }
}
