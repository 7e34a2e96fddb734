package org.coursewright.bond.internal.laying;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.coursewright.bond.internal.choice.WallCost;
import org.coursewright.bond.internal.lap.LapCheck;
import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.proof.CutProof;
import org.coursewright.bond.internal.proof.Prover;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.bond.internal.stack.Skeleton;
import org.coursewright.measure.Progress;

/**
 * Chooses a pattern for every run of a wall: the best combination of the patterns in the pools, then better patterns for
 * runs that do not fit their neighbours, and again, until no run alone can be improved.
 */
final class StackLayout {

    private static final int ROUNDS = 4;
    private static final int ROUNDS_SOON = 3;
    private static final int PARTNERS = 6;
    private static final int PARTNER_CUTS = 2;

    private final RunStack stack;
    private final Skeleton skeleton;
    private final int leastViolations;
    private final RunPricing pricing;
    private final Prover prover;
    private final Progress progress;
    private final PatternChoice choice;
    private List<Pattern> best = List.of();
    private int bound;
    private int[] chosen = new int[0];
    private long cost = Long.MAX_VALUE;

    /** @param prover asked only if it takes more than a look to lay the runs */
    StackLayout(RunStack stack, Prover prover, Progress progress) {
        this.stack = stack;
        this.prover = prover;
        stack.seed();
        skeleton = stack.skeleton();
        leastViolations = skeleton.leastViolations();
        pricing = new RunPricing(stack, RunPricing.Extent.MORE);
        choice = new PatternChoice(stack);
        this.progress = progress;
    }

    /**
     * A first choice, improved where the wall is so small that this is less work than a proof.
     *
     * @return whether it {@link #isMet}, as what runs need alone shows
     */
    boolean begin() {
        bound = stack.leastCuts();
        take();
        if (!isMet() && stack.isSmall()
                && new RunPricing(stack, RunPricing.Extent.FEWEST).price(patterns(), progress)) {
            take();
        }
        return isMet();
    }

    /** Goes on after {@link #begin}; the chosen pattern of every run. */
    List<Pattern> lay() {
        if (!isMet()) {
            stack.seedMore();
            follow(prover.prove());
        }
        if (!isLapped()) {
            findPartners();
            search();
        }
        if (!isLapped()) {
            new SkeletonPatterns(stack).add(progress);
            search();
        }
        if (!isLapped()) {
            repair();
        }
        if (!isLapped()) {
            follow(prover.vary());
        }
        if (!isMet() && new CompletePools(stack).complete(progress)) {
            search();
        }
        return tidied();
    }

    private List<Pattern> tidied() {
        best = new Tidying(stack, best).tidy(progress);
        return best;
    }

    /**
     * Whether to go on may help. Where laps are short that might be avoided bounds are of no use, as they are on layouts
     * without; but the bound of a small wall is made of patterns at last, and these may lap.
     */
    boolean mayBeBetter() {
        return !isMet() && (isLapped() || stack.isSmall());
    }

    /** Begins with what {@link #lay} had found, and goes on with a better bound and what that is made of. */
    List<Pattern> layBetter() {
        bound = stack.leastCuts();
        take();
        follow(prover.refine(isLapped() ? Math.toIntExact(WallCost.cuts(cost)) : Integer.MAX_VALUE));
        return tidied();
    }

    /** Takes a bound, and tries to have what it is made of. */
    private void follow(CutProof proof) {
        bound = Math.max(bound, proof.cuts());
        stack.add(proof.patterns());
        search();
        GuidedPatterns guided = new GuidedPatterns(stack, proof.chosen());
        if (!isMet()) {
            guided.add(progress);
            search();
        }
        if (!isMet()) {
            guided.follow(proof.patterns(), progress);
            search();
        }
    }

    /** A first choice, improved a little; only what runs cost alone bounds it. */
    List<Pattern> laySoon() {
        bound = stack.leastCuts();
        take();
        if (!isMet()) {
            stack.seedMore();
            search(ROUNDS_SOON);
        }
        return best;
    }

    /** Chooses from the pools as they are. */
    private void take() {
        chosen = choice.choose(progress);
        long now = cost();
        if (now < cost) {
            cost = now;
            best = patterns();
        }
    }

    private void repair() {
        PairRepair repair = new PairRepair(stack);
        for (int round = 0; round < ROUNDS && !isLapped(); round++) {
            boolean grown = false;
            for (RunStack.Contact contact : stack.contacts()) {
                progress.checkCancelled();
                if (LapCheck.violations(best.get(contact.below()), best.get(contact.above()), contact.offset(),
                        stack.masonry().lap()) > skeleton.allowed(contact)) {
                    grown |= repair.repair(contact, best);
                }
            }
            if (!grown) {
                return;
            }
            search();
        }
    }

    /** Whether no layout has fewer lap violations or, with as few, fewer cuts; proven. */
    boolean isMet() {
        return isLapped() && WallCost.cuts(cost) == bound;
    }

    /** Cuts that every layout with as few lap violations needs; proven. */
    int bound() {
        return isLapped() ? bound : stack.leastCuts();
    }

    private boolean isLapped() {
        return WallCost.violations(cost) == leastViolations;
    }

    private void search() {
        search(ROUNDS);
    }

    private void search(int rounds) {
        for (int round = 0; round < rounds; round++) {
            take();
            if (isMet() || !pricing.price(patterns(), progress)) {
                break;
            }
        }
    }

    private List<Pattern> patterns() {
        List<Pattern> patterns = new ArrayList<>();
        for (int run = 0; run < chosen.length; run++) {
            patterns.add(pattern(run));
        }
        return patterns;
    }

    private Pattern pattern(int run) {
        return stack.pool(run).patterns().get(chosen[run]);
    }

    /** For cheap patterns of every shape, patterns of the shapes above and below that lap with them. */
    private void findPartners() {
        Set<List<Object>> seen = new HashSet<>();
        for (RunStack.Contact contact : stack.contacts()) {
            PatternPool below = stack.pool(contact.below());
            PatternPool above = stack.pool(contact.above());
            if (seen.add(List.of(below.shape(), above.shape(), contact.offset()))) {
                findPartners(below, above, -contact.offset(), contact.forced());
                findPartners(above, below, contact.offset(), contact.forced());
            }
        }
    }

    private void findPartners(PatternPool from, PatternPool to, long offset, int forced) {
        for (Pattern pattern : List.copyOf(from.patterns().subList(0, Math.min(PARTNERS, from.patterns().size())))) {
            progress.checkCancelled();
            Windows windows = new Windows();
            windows.add(pattern, offset, stack.masonry().lap(), to.shape().length());
            to.price(windows, forced, forced, Integer.MAX_VALUE, PARTNER_CUTS).ifPresent(to::add);
        }
    }

    private long cost() {
        long sum = 0;
        for (int run = 0; run < chosen.length; run++) {
            sum += pattern(run).cost();
        }
        for (RunStack.Contact contact : stack.contacts()) {
            sum += WallCost.of(violations(contact), 0, 0);
        }
        return sum;
    }

    private int violations(RunStack.Contact contact) {
        return LapCheck.violations(pattern(contact.below()), pattern(contact.above()), contact.offset(),
                stack.masonry().lap());
    }
}
