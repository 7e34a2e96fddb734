package org.coursewright.workbench.internal.safety;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.concurrent.Executor;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.core.session.Recovery;
import org.coursewright.core.session.Recovery.Outcome;
import org.coursewright.workbench.OpenProjectsListener;
import org.coursewright.workbench.notice.Notice;
import org.coursewright.workbench.notice.Notice.Weight;
import org.coursewright.workbench.notice.Notices;
import org.eclipse.osgi.util.NLS;

/**
 * Says what became of edits that were not saved when the program ended by force, and that edits cannot be kept against the
 * next time.
 *
 * @param notices where it is said
 * @param display runs what the journal tells in the user interface thread
 */
public record RecoveryReport(Notices notices, Executor display) implements OpenProjectsListener {

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        if (change == Change.OPENED) {
            session.onJournalFailure(() -> display.execute(() -> tellJournalFailed(session)));
            session.recovery().ifPresent(recovery -> tell(session, Weight.NOTE, text(recovery)));
        } else if (change == Change.JOURNAL_FAILED) {
            tellJournalFailed(session);
        }
    }

    /** The failure may be older than the last saving, which made good for it. */
    private void tellJournalFailed(ProjectSession session) {
        if (session.isDirty()) {
            tell(session, Weight.ERROR,
                    NLS.bind(SafetyText.journalFailed, session.file().toAbsolutePath().getParent()));
        }
    }

    private void tell(ProjectSession session, Weight weight, String text) {
        notices.tell(new Notice(session, weight, NLS.bind(SafetyText.about, session.project().getName(), text), true));
    }

    private static String text(Recovery recovery) {
        return recovery.outcome() == Outcome.REPLAYED
                ? NLS.bind(SafetyText.replayed, recovery.editedAt().map(RecoveryReport::localTime).orElse(""))
                : recovery.message();
    }

    private static String localTime(Instant moment) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .format(moment.atZone(ZoneId.systemDefault()));
    }
}
