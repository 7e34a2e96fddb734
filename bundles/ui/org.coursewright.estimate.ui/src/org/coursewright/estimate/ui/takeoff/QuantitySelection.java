package org.coursewright.estimate.ui.takeoff;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.core.cost.QuantityGroup;
import org.coursewright.core.cost.QuantityGrouping;
import org.coursewright.core.cost.QuantityRow;

/**
 * Which rows somebody wants to see, and how they are put together.
 *
 * @param grouping by what
 * @param kind only rows of that kind, or of every kind
 * @param search only rows that have all of these words somewhere, in whatever case
 */
public record QuantitySelection(QuantityGrouping grouping, Optional<String> kind, String search) {

    /** Everything, by kind. */
    public static final QuantitySelection ALL = new QuantitySelection(QuantityGrouping.KIND, Optional.empty(), "");

    public QuantitySelection {
        Objects.requireNonNull(grouping, "grouping");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(search, "search");
    }

    /**
     * @param rows all there are
     * @return groups of those wanted; their totals are of what is to be seen
     */
    public List<QuantityGroup> of(List<QuantityRow> rows) {
        return grouping.of(rows.stream().filter(this::wants).toList());
    }

    private boolean wants(QuantityRow row) {
        boolean ofKind = kind.isEmpty() || kind.get().equals(row.kind());
        return ofKind
                && Stream.of(search.toLowerCase(Locale.ROOT).strip().split("\\s+")).allMatch(words(row)::contains);
    }

    private static String words(QuantityRow row) {
        return String.join(" ", row.item(), row.kind(), row.element().orElse(""), String.join(" ", row.line()
                .elements())).toLowerCase(Locale.ROOT);
    }
}
