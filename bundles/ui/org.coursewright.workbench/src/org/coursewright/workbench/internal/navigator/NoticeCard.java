package org.coursewright.workbench.internal.navigator;

import org.coursewright.workbench.internal.element.ElementIcons;
import org.coursewright.workbench.notice.Notice;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

/** One message that stays until it is dismissed. */
final class NoticeCard extends Composite {

    private static final int COLUMNS = 2;
    private static final int MARGIN = 6;
    /** Narrow, so that a long message wraps instead of widening the view. */
    private static final int TEXT_WIDTH = 150;

    NoticeCard(Composite parent, Notice notice, Runnable dismiss) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(COLUMNS).margins(MARGIN, MARGIN).applyTo(this);
        Label icon = new Label(this, SWT.NONE);
        icon.setImage(new LocalResourceManager(JFaceResources.getResources(), this)
                .create(ElementIcons.named(notice.weight().icon())));
        GridDataFactory.swtDefaults().align(SWT.CENTER, SWT.TOP).applyTo(icon);
        Label text = new Label(this, SWT.WRAP);
        text.setText(notice.message());
        GridDataFactory.fillDefaults().grab(true, false).hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(text);
        Link link = new Link(this, SWT.NONE);
        link.setText(NavigatorText.dismiss);
        link.addListener(SWT.Selection, event -> dismiss.run());
        GridDataFactory.swtDefaults().span(COLUMNS, 1).align(SWT.END, SWT.CENTER).applyTo(link);
        GridDataFactory.fillDefaults().span(COLUMNS, 1).grab(true, false)
                .applyTo(new Label(this, SWT.SEPARATOR | SWT.HORIZONTAL));
    }
}
