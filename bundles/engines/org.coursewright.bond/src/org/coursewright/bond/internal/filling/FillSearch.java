package org.coursewright.bond.internal.filling;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.coursewright.bond.internal.choice.WorkLimit;
import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;

/**
 * Looks for any filling of a run that is neither raked nor pinned, with all its gauges; that there is none is a proof.
 * Gauges close to one another are excluded together. A run is filled from the end that is nearer to what was put beside it
 * last: if that is what no filling goes round, few pieces tell so.
 */
final class FillSearch {

    private final RunShape shape;
    private final Masonry masonry;
    private final Shortfalls shortfalls;
    private final Gauges gauges;
    private final WorkLimit limit;
    private final FillTable forth;
    private final FillTable back;
    private final RunShape turned;
    private final Map<Integer, List<List<Gauge>>> groupsByCuts = new HashMap<>();

    FillSearch(RunShape shape, Shortfalls shortfalls, Gauges gauges, WorkLimit limit) {
        this.shape = shape;
        this.shortfalls = shortfalls;
        this.gauges = gauges;
        this.limit = limit;
        masonry = shortfalls.masonry();
        turned = shape.turned();
        forth = new FillTable(shape, masonry, shortfalls, limit);
        back = new FillTable(turned, masonry, shortfalls, limit);
    }

    /** What is asked for; the windows as they look from the end that filling begins at. */
    private record Inquiry(FillTable table, Windows windows, int violations, int cuts) {

        Windows.Grid grid(Gauge gauge) {
            return windows.grid(gauge.joints());
        }
    }

    /** A filling that meets no more windows and has no more cuts than that. */
    Optional<Pattern> any(Windows windows, int mostViolations, int mostCuts) {
        boolean late = windows.isLastLate(shape.length());
        Inquiry inquiry = new Inquiry(late ? back : forth, late ? windows.turned(shape.length()) : windows,
                mostViolations, mostCuts);
        for (List<Gauge> group : groupsByCuts.computeIfAbsent(mostCuts, this::groups)) {
            Optional<Pattern> found = hasRoom(group.get(0), inquiry) ? anyOf(group, inquiry) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /**
     * Whether all joints between pieces find room between the windows, if pieces are no shorter than the shortest special;
     * every shorter piece and every window that may be met makes room for one more.
     *
     * @param gauge of those with as many pieces the one with the thinnest joints
     */
    private boolean hasRoom(Gauge gauge, Inquiry inquiry) {
        long parts = Math.max(1, gauge.joints());
        long apart = (masonry.whole() - shortfalls.specialMost()) * parts + gauge.jointTotal();
        long needed = gauge.pieces() - 1L - inquiry.violations() - inquiry.cuts();
        return needed <= 0
                || needed <= inquiry.grid(gauge).room(gauge.jointTotal(), apart, shape.length() * parts);
    }

    /** Where gauges close to one another cannot be excluded together, each half of them is looked at. */
    private Optional<Pattern> anyOf(List<Gauge> group, Inquiry inquiry) {
        Gauge first = group.get(0);
        if (limit.isSpent()) {
            return Optional.empty();
        }
        if (group.size() == 1) {
            FillTable.Score score = inquiry.table().fill(first, inquiry.grid(first), inquiry.violations(),
                    inquiry.cuts());
            return score == FillTable.UNFILLED ? Optional.empty() : Optional.of(pattern(inquiry.table(), score));
        }
        Gauge last = group.get(group.size() - 1);
        if (!inquiry.table().mayFill(first, last, inquiry.grid(last), inquiry.violations(), inquiry.cuts())) {
            return Optional.empty();
        }
        int half = group.size() / 2;
        return anyOf(group.subList(0, half), inquiry).or(() -> anyOf(group.subList(half, group.size()), inquiry));
    }

    private Pattern pattern(FillTable table, FillTable.Score score) {
        List<Pattern> patterns = new ArrayList<>();
        new FillTrace(table, table == back ? turned : shape, masonry, 1, patterns).gather(score);
        return table == back ? patterns.get(0).turned(shape, masonry) : patterns.get(0);
    }

    /** The gauges with which the run can be filled at all with no more cuts than that. */
    private List<List<Gauge>> groups(int mostCuts) {
        Map<Integer, List<Gauge>> byPieces = new TreeMap<>();
        gauges.all().stream().filter(gauge -> shortfalls.leastCuts(gauge) <= mostCuts)
                .forEach(gauge -> byPieces.computeIfAbsent(gauge.pieces(), pieces -> new ArrayList<>()).add(gauge));
        List<Gauge> fillable = new ArrayList<>();
        for (List<Gauge> alike : byPieces.values()) {
            Gauge nearest = Collections.min(alike, Comparator.comparingLong(Gauge::shortfall));
            Gauge furthest = Collections.max(alike, Comparator.comparingLong(Gauge::shortfall));
            forth.mayFill(nearest, furthest, new Windows().grid(furthest.joints()), 0, mostCuts);
            alike.stream().filter(gauge -> forth.isReached(gauge, mostCuts)).forEach(fillable::add);
        }
        return gauges.groups(fillable);
    }
}
