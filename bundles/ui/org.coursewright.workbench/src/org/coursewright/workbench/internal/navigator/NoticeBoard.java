package org.coursewright.workbench.internal.navigator;

import org.coursewright.workbench.notice.Notices;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Shows, one below the other, what is said about the open projects; takes no room while there is nothing. */
final class NoticeBoard extends Composite {

    private final Notices notices;

    NoticeBoard(Composite parent, Notices notices) {
        super(parent, 0);
        this.notices = notices;
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(this);
        Runnable refresh = this::showAll;
        notices.addListener(refresh);
        addDisposeListener(event -> notices.removeListener(refresh));
        showAll();
    }

    private void showAll() {
        for (Control card : getChildren()) {
            card.dispose();
        }
        notices.all().forEach(notice -> GridDataFactory.fillDefaults().grab(true, false)
                .applyTo(new NoticeCard(this, notice, () -> notices.dismiss(notice))));
        setVisible(!notices.all().isEmpty());
        if (getLayoutData() instanceof GridData data) {
            data.exclude = notices.all().isEmpty();
        }
        getParent().layout(true, true);
    }
}
