package org.coursewright.estimate.ui.export;

import org.coursewright.core.derive.Derived;

/** Where a report has its results from. */
@FunctionalInterface
interface ResultSource {

    /** @return the result, worked out now if need be */
    <T> T of(Derived<T> wanted);
}
