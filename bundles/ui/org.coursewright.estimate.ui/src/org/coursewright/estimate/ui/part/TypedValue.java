package org.coursewright.estimate.ui.part;

import java.util.Optional;

/** A value that can be typed over. */
public interface TypedValue {

    /** @return what it is now; setting the same text changes nothing */
    String text();

    /**
     * Gives it another value.
     *
     * @param typed as text
     * @return why not, in which case nothing has changed
     */
    Optional<String> set(String typed);
}
