package org.coursewright.workbench.internal.navigator;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.HashMap;
import java.util.Map;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.core.session.Recovery;
import org.coursewright.core.session.Recovery.Outcome;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/**
 * Announces, one below the other, what became of edits that were not saved when the program ended by force. A notice
 * stays until it is dismissed or its project is saved or closed; it takes no room while there is none.
 */
final class RecoveryNotices extends Composite implements OpenProjectsListener {

    private final Map<ProjectSession, Control> notices = new HashMap<>();

    RecoveryNotices(Composite parent, OpenProjects projects) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(this);
        projects.addListener(this);
        addDisposeListener(event -> projects.removeListener(this));
        projects.sessions().forEach(this::announce);
        showIfAny();
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        if (change == Change.OPENED) {
            announce(session);
        } else if (change == Change.CLOSED || !session.isDirty()) {
            dismiss(session);
        }
    }

    private void announce(ProjectSession session) {
        session.recovery().ifPresent(recovery -> announce(session, recovery));
    }

    private void announce(ProjectSession session, Recovery recovery) {
        String message = NLS.bind(NavigatorText.recovery, session.project().getName(), text(recovery));
        Control notice = new Notice(this, message, () -> dismiss(session));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(notice);
        notices.put(session, notice);
        showIfAny();
    }

    private static String text(Recovery recovery) {
        return recovery.outcome() == Outcome.REPLAYED
                ? NLS.bind(NavigatorText.replayed, recovery.editedAt().map(RecoveryNotices::localTime).orElse(""))
                : recovery.message();
    }

    private static String localTime(Instant moment) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .format(moment.atZone(ZoneId.systemDefault()));
    }

    private void dismiss(ProjectSession session) {
        if (notices.containsKey(session)) {
            notices.remove(session).dispose();
            showIfAny();
        }
    }

    private void showIfAny() {
        setVisible(!notices.isEmpty());
        if (getLayoutData() instanceof GridData data) {
            data.exclude = notices.isEmpty();
        }
        getParent().layout(true, true);
    }
}
