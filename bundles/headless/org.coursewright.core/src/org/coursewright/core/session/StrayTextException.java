package org.coursewright.core.session;

import org.eclipse.emf.ecore.xmi.XMIException;

/** Says that a project file has text where only elements are expected. */
final class StrayTextException extends XMIException {

    private static final long serialVersionUID = 1L;

    private final String text;

    StrayTextException(String text, String location, int line, int column) {
        super(text, location, line, column);
        this.text = text;
    }

    String text() {
        return text;
    }
}
