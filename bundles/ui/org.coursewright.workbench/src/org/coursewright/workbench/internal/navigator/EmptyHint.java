package org.coursewright.workbench.internal.navigator;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

/** Stands in the navigator while no project is open, and says how to open one. */
final class EmptyHint extends Composite {

    private static final int MARGIN = 12;

    EmptyHint(Composite parent, Runnable open) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(MARGIN, MARGIN).applyTo(this);
        Label text = new Label(this, SWT.WRAP);
        text.setText(NavigatorText.emptyHint);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        Link link = new Link(this, SWT.NONE);
        link.setText(NavigatorText.openLink);
        link.addListener(SWT.Selection, event -> open.run());
    }
}
