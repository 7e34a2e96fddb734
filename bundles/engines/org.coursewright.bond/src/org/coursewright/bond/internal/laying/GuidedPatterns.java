package org.coursewright.bond.internal.laying;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.proof.RunChoice;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.measure.Progress;

/** Adds patterns that follow what a bound has chosen for the runs round them: often all of it can be had at once. */
final class GuidedPatterns {

    private static final int VARIANTS = 8;
    private static final int EXTRA_CUTS = 3;

    private final RunStack stack;
    private final List<RunChoice> chosen;
    private final PartnerSearch partners;
    private final Set<List<Object>> done = new HashSet<>();

    /** @param chosen by run what the bound is made of */
    GuidedPatterns(RunStack stack, List<RunChoice> chosen) {
        this.stack = stack;
        this.chosen = chosen;
        partners = new PartnerSearch(stack);
    }

    void add(Progress progress) {
        for (int run = 0; run < chosen.size(); run++) {
            progress.checkCancelled();
            Optional<Pattern> pattern = chosen.get(run).pattern();
            if (pattern.isPresent()) {
                stack.pool(run).add(pattern.get());
            } else if (done.add(place(run))) {
                follow(run);
            }
        }
    }

    /** Lets the neighbours of runs follow patterns found for them, wherever they lie between others. */
    void follow(Map<RunShape, List<Pattern>> patterns, Progress progress) {
        Set<List<Object>> followed = new HashSet<>();
        for (int run = 0; run < chosen.size(); run++) {
            progress.checkCancelled();
            RunShape shape = stack.pool(run).shape();
            List<Object> surroundings = new ArrayList<>(List.of(shape));
            for (RunStack.Contact contact : stack.contactsOf(run)) {
                surroundings.add(stack.pool(contact.other(run)).shape());
                surroundings.add(contact.offsetFrom(run));
            }
            if (followed.add(surroundings)) {
                for (Pattern pattern : patterns.getOrDefault(shape, List.of())) {
                    partners.follow(run, pattern, true);
                    partners.follow(run, pattern, false);
                }
            }
        }
    }

    private List<Object> place(int run) {
        List<Object> place = new ArrayList<>(List.of(stack.pool(run).shape(), stack.skeleton().joints(run)));
        for (RunStack.Contact contact : stack.contactsOf(run)) {
            chosen.get(contact.other(run)).pattern().ifPresent(pattern -> {
                place.add(pattern);
                place.add(contact.offsetFrom(run));
            });
        }
        return place;
    }

    private void follow(int run) {
        PatternPool pool = stack.pool(run);
        for (Pattern pattern : pool.variants(windows(run), stack.skeleton().least(run), EXTRA_CUTS, VARIANTS)) {
            pool.add(pattern);
            partners.follow(run, pattern, true);
            partners.follow(run, pattern, false);
        }
        pool.mayFill(windows(run), stack.skeleton().least(run), chosen.get(run).extra(), pool::add);
    }

    private Windows windows(int run) {
        int[] fixed = stack.contactsOf(run).stream().mapToInt(contact -> contact.other(run))
                .filter(other -> chosen.get(other).pattern().isPresent()).toArray();
        Windows windows = stack.skeleton().certain(run, fixed);
        for (RunStack.Contact contact : stack.contactsOf(run)) {
            chosen.get(contact.other(run)).pattern()
                    .ifPresent(pattern -> windows.add(pattern, contact.offsetFrom(run), stack.masonry().lap(),
                            stack.pool(run).shape().length()));
        }
        return windows;
    }
}
