package org.coursewright.bond.internal.laying;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.internal.lap.LapCheck;
import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.bond.internal.stack.Skeleton;
import org.coursewright.measure.Progress;

/** Adds patterns to the pools with which runs of a layout may do better; every run is priced once between the same neighbours. */
final class RunPricing {

    private static final int PARTNER_CUTS = 2;

    /** Which patterns are looked for. */
    enum Extent {
        /** Those with no cut more than the run needs alone that meet no lap they can avoid. */
        FEWEST,
        /** Also those with some cuts more, or fewer short laps than now. */
        MORE
    }

    private record Beside(Pattern pattern, long offset, boolean above) {
    }

    /** A run between chosen neighbours, for remembering that it has been priced. */
    private record Place(RunShape shape, List<Beside> neighbours) {
    }

    private final RunStack stack;
    private final Skeleton skeleton;
    private final PartnerSearch partners;
    private final Extent extent;
    private final Set<Place> priced = new HashSet<>();

    RunPricing(RunStack stack, Extent extent) {
        this.stack = stack;
        this.extent = extent;
        skeleton = stack.skeleton();
        partners = new PartnerSearch(stack);
    }

    /**
     * Prices every run that could do better between its neighbours.
     *
     * @param chosen the pattern of every run
     * @return whether any pool has grown
     */
    boolean price(List<Pattern> chosen, Progress progress) {
        boolean grown = false;
        for (int run = 0; run < chosen.size(); run++) {
            progress.checkCancelled();
            int violations = 0;
            for (RunStack.Contact contact : stack.contactsOf(run)) {
                violations += LapCheck.violations(chosen.get(contact.below()), chosen.get(contact.above()),
                        contact.offset(), stack.masonry().lap());
            }
            if (violations > skeleton.least(run) || chosen.get(run).cuts() > stack.pool(run).leastCuts()) {
                grown |= price(run, chosen, violations);
            }
        }
        return grown;
    }

    /**
     * Prices a run between its neighbours; then against those on one side only, as the others may give way, and prices
     * the others against what was found.
     */
    private boolean price(int run, List<Pattern> chosen, int violations) {
        PatternPool pool = stack.pool(run);
        if (!priced.add(new Place(pool.shape(), neighbours(run, chosen)))) {
            return false;
        }
        boolean grown = add(pool, between(run, chosen, violations));
        for (boolean above : new boolean[]{true, false}) {
            Optional<Pattern> found = onOneSide(run, chosen, violations, above);
            if (add(pool, found)) {
                grown = true;
                found.ifPresent(pattern -> partners.follow(run, pattern, above));
            }
        }
        return grown;
    }

    private Optional<Pattern> between(int run, List<Pattern> chosen, int violations) {
        PatternPool pool = stack.pool(run);
        int forced = skeleton.least(run);
        Windows windows = windows(run, chosen, true, true);
        return extent == Extent.FEWEST
                ? pool.price(windows, forced, forced, Integer.MAX_VALUE, 0)
                : pool.price(windows, forced, violations, chosen.get(run).cuts(), PatternPool.EXTRA_CUTS);
    }

    /** Where a lap is short that may cost cuts. */
    private Optional<Pattern> onOneSide(int run, List<Pattern> chosen, int violations, boolean above) {
        PatternPool pool = stack.pool(run);
        int forced = skeleton.least(run);
        Windows windows = windows(run, chosen, !above, above);
        return extent == Extent.FEWEST
                ? pool.price(windows, forced, forced, Integer.MAX_VALUE, 0)
                : pool.price(windows, forced, forced,
                        violations > forced ? Integer.MAX_VALUE : chosen.get(run).cuts(), PARTNER_CUTS);
    }

    private List<Beside> neighbours(int run, List<Pattern> chosen) {
        List<Beside> neighbours = new ArrayList<>();
        for (RunStack.Contact contact : stack.contactsOf(run)) {
            neighbours.add(new Beside(chosen.get(contact.other(run)), contact.offsetFrom(run), contact.below() == run));
        }
        return neighbours;
    }

    /** Windows round the joints of neighbours on the sides that count, and round those that are there anyway. */
    private Windows windows(int run, List<Pattern> chosen, boolean below, boolean above) {
        Windows windows = below && above ? new Windows() : skeleton.windows(run);
        for (RunStack.Contact contact : stack.contactsOf(run)) {
            if (contact.below() == run ? above : below) {
                windows.add(chosen.get(contact.other(run)), contact.offsetFrom(run), stack.masonry().lap(),
                        stack.pool(run).shape().length());
            }
        }
        return windows;
    }

    private static boolean add(PatternPool pool, Optional<Pattern> pattern) {
        return pattern.isPresent() && pool.add(pattern.get());
    }
}
