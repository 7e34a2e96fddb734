package org.coursewright.exchange.estimate;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.coursewright.exchange.remark.Shown;
import org.coursewright.exchange.table.Cells;
import org.coursewright.model.project.Marked;

/**
 * Elements that cells name by their marks; capital letters do not matter.
 *
 * @param <E> their type
 */
final class References<E extends Marked> {

    private static final int MOST_SHOWN = 30;

    private final String kind;
    private final Map<String, E> byMark = new TreeMap<>();

    /** @param kind what they are, such as {@code mix} */
    References(String kind) {
        this.kind = kind;
    }

    void add(E element) {
        byMark.putIfAbsent(key(element.getMark()), element);
    }

    /** @return the element that a cell names, empty if the cell is; a mark that nothing bears is told */
    Optional<E> named(Cells cells, String column) {
        String mark = cells.text(column);
        return mark.isEmpty() ? Optional.empty() : find(cells, column, mark);
    }

    /** @return the element with a mark; one that nothing bears is told */
    Optional<E> find(Cells cells, String column, String mark) {
        Optional<E> found = known(mark);
        if (found.isEmpty()) {
            cells.wrong(column, "There is no %s %s. %s".formatted(kind, Shown.quoted(mark), byMark.isEmpty()
                    ? "There is none at all."
                    : "Marks are %s.".formatted(byMark.values().stream().map(Marked::getMark).limit(MOST_SHOWN).collect(
                            Collectors.joining(", ")))));
        }
        return found;
    }

    Optional<E> known(String mark) {
        return Optional.ofNullable(byMark.get(key(mark)));
    }

    private static String key(String mark) {
        return String.valueOf(mark).toLowerCase(Locale.ROOT);
    }
}
