package org.coursewright.core.derive;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.util.EContentAdapter;

/** Counts the changes of a project, in any of its elements. */
final class ChangeCount extends EContentAdapter {

    private long changes;

    /** @return a number that is another one after each change */
    long changes() {
        return changes;
    }

    @Override
    public void notifyChanged(Notification notification) {
        super.notifyChanged(notification);
        if (!notification.isTouch()) {
            changes++;
        }
    }
}
