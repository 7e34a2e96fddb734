package org.coursewright.core.bond;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.coursewright.bond.CutCause;
import org.coursewright.bond.CutReason;

/**
 * Cuts of one wall that have the same cause in several courses.
 *
 * @param cuts how many pieces are cut, at least 1
 * @param courses numbers of the courses, each greater than the one before
 * @param why whole sentences
 */
public record CutGroup(int cuts, List<Integer> courses, String why) {

    public CutGroup {
        courses = List.copyOf(courses);
        Objects.requireNonNull(why, "why");
    }

    /**
     * Groups the cuts of a wall by what is to be said about them.
     *
     * @param reasons of the wall's cuts, from the bottom up, not null
     * @param words that say it, not null
     * @return the groups, in the order of the first course of each
     */
    public static List<CutGroup> of(List<CutReason> reasons, CutWords words) {
        Map<String, CutGroup> groups = new LinkedHashMap<>();
        for (CutReason reason : reasons) {
            for (CutCause cause : reason.causes()) {
                String why = words.of(reason, cause);
                groups.merge(why, new CutGroup(cause.cuts(), List.of(reason.course()), why), CutGroup::with);
            }
        }
        return List.copyOf(groups.values());
    }

    private CutGroup with(CutGroup later) {
        List<Integer> all = new ArrayList<>(courses);
        later.courses.stream().filter(course -> !all.contains(course)).forEach(all::add);
        return new CutGroup(cuts + later.cuts, all, why);
    }
}
