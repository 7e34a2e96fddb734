package org.coursewright.exchange.remark;

import java.util.ArrayList;
import java.util.List;

/** Gathers all that is wrong with a set of files, so that it can be told in one go. Confined to one thread. */
public final class Remarks {

    private final List<Remark> errors = new ArrayList<>();
    private final List<Remark> warnings = new ArrayList<>();

    /** Notes something that makes the file unusable. */
    public void error(Place place, String message) {
        errors.add(new Remark(place, message));
    }

    /** Notes something that the person should know but that stops nothing. */
    public void warning(Place place, String message) {
        warnings.add(new Remark(place, message));
    }

    /** @return whether anything makes the files unusable */
    public boolean hasErrors() {
        return !errors.isEmpty();
    }

    /** @return how many errors were noted so far */
    public int errorCount() {
        return errors.size();
    }

    /** @return the errors in the order they were noted */
    public List<Remark> errors() {
        return List.copyOf(errors);
    }

    /** @return the warnings in the order they were noted */
    public List<Remark> warnings() {
        return List.copyOf(warnings);
    }
}
