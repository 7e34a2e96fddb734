package org.coursewright.bond.internal.laying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.internal.lap.LapCheck;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.measure.Progress;

/**
 * Changes patterns of a wall for others with as many cuts and no more lap violations, so that fewer blocks are cut up,
 * fewer lengths are cut and fewer gauges are set; runs laid alike change alike. That is a local search: what it ends with
 * cannot be bettered by one such change, but may be by several.
 */
final class Tidying {

    private static final int PASSES = 3;
    private static final int MOST_CANDIDATES = 80;

    private record Alike(RunShape shape, Pattern pattern) {
    }

    private record Neighbour(Pattern pattern, long offset) {
    }

    private final RunStack stack;
    private final Masonry masonry;
    private final List<Pattern> patterns;
    private final Tidiness.Tally tally;

    /** @param patterns of every run; not changed */
    Tidying(RunStack stack, List<Pattern> patterns) {
        this.stack = stack;
        masonry = stack.masonry();
        this.patterns = new ArrayList<>(patterns);
        tally = new Tidiness.Tally(masonry);
        patterns.forEach(pattern -> tally.add(pattern, 1));
    }

    /** The pattern of every run. */
    List<Pattern> tidy(Progress progress) {
        boolean changed = true;
        for (int pass = 0; pass < PASSES && changed; pass++) {
            changed = false;
            for (Map.Entry<Alike, List<Integer>> alike : alike().entrySet()) {
                progress.checkCancelled();
                changed |= better(alike.getKey(), alike.getValue());
            }
        }
        return patterns;
    }

    private Map<Alike, List<Integer>> alike() {
        Map<Alike, List<Integer>> alike = new LinkedHashMap<>();
        for (int run = 0; run < patterns.size(); run++) {
            alike.computeIfAbsent(new Alike(stack.pool(run).shape(), patterns.get(run)), key -> new ArrayList<>())
                    .add(run);
        }
        return alike;
    }

    private boolean better(Alike alike, List<Integer> runs) {
        Pattern best = alike.pattern();
        Tidiness least = tally.tidiness();
        Optional<Map<Neighbour, Integer>> neighbours = Optional.empty();
        Set<Pattern> candidates = candidates(alike, runs.get(0));
        tally.add(alike.pattern(), -runs.size());
        Pattern weighed = best;
        Tidiness tidiness = least;
        for (Pattern candidate : candidates) {
            // most are other orders of the same pieces, and weigh the same
            tidiness = candidate.isCutAs(weighed) ? tidiness : with(candidate, runs.size());
            weighed = candidate;
            if (tidiness.compareTo(least) < 0) {
                neighbours = neighbours.or(() -> Optional.of(neighbours(runs)));
                if (laps(candidate, neighbours.get())) {
                    least = tidiness;
                    best = candidate;
                }
            }
        }
        tally.add(best, runs.size());
        for (int run : runs) {
            patterns.set(run, best);
        }
        return best != alike.pattern();
    }

    private Tidiness with(Pattern pattern, int times) {
        tally.add(pattern, times);
        Tidiness tidiness = tally.tidiness();
        tally.add(pattern, -times);
        return tidiness;
    }

    /** By pattern beside one of the runs, the violations there now; where runs alike lie on one another none may change. */
    private Map<Neighbour, Integer> neighbours(List<Integer> runs) {
        Set<Integer> own = new LinkedHashSet<>(runs);
        Map<Neighbour, Integer> neighbours = new HashMap<>();
        for (int run : runs) {
            for (RunStack.Contact contact : stack.contactsOf(run)) {
                int other = contact.other(run);
                Neighbour neighbour = new Neighbour(patterns.get(other), contact.offsetFrom(run));
                int violations = own.contains(other)
                        ? -1
                        : LapCheck.violations(patterns.get(run), patterns.get(other), contact.offsetFrom(run),
                                masonry.lap());
                neighbours.merge(neighbour, violations, Math::min);
            }
        }
        return neighbours;
    }

    private boolean laps(Pattern candidate, Map<Neighbour, Integer> neighbours) {
        return neighbours.entrySet().stream()
                .allMatch(entry -> entry.getValue() >= 0 && LapCheck.violations(candidate, entry.getKey().pattern(),
                        entry.getKey().offset(), masonry.lap(), entry.getValue() + 1) <= entry.getValue());
    }

    private Set<Pattern> candidates(Alike alike, int run) {
        Set<Pattern> candidates = new LinkedHashSet<>();
        if (!alike.shape().isRaked()) {
            for (long from : alike.pattern().cutLengths()) {
                for (long to : tally.cutLengths()) {
                    retune(alike, from, to, candidates);
                }
            }
        }
        int tried = 0;
        for (Pattern pattern : stack.pool(run).patterns()) {
            if (pattern.cuts() == alike.pattern().cuts() && tried++ < MOST_CANDIDATES) {
                candidates.add(pattern);
            }
        }
        return candidates;
    }

    /** The pattern with cut pieces of one length cut to another, if the joints can take up the difference. */
    private void retune(Alike alike, long from, long to, Set<Pattern> candidates) {
        if (from == to || !masonry.canCut(to)) {
            return;
        }
        Pattern pattern = alike.pattern();
        long[] pieces = pattern.pieces().clone();
        long jointTotal = pattern.jointTotal();
        for (int piece = 0; piece < pieces.length; piece++) {
            if (pattern.isCut(piece) && pieces[piece] == from) {
                pieces[piece] = to;
                jointTotal += from - to;
            }
        }
        if (jointTotal >= masonry.least() * pattern.joints()
                && jointTotal <= masonry.most() * pattern.joints()) {
            Pattern retuned = new Pattern(alike.shape(), masonry, pieces, pattern.kinds(), jointTotal);
            if (alike.shape().pins().areKept(alike.shape(), retuned)) {
                candidates.add(retuned);
            }
        }
    }
}
