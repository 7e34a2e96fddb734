package org.coursewright.bond.internal.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

import org.coursewright.bond.internal.choice.CostNetwork;
import org.coursewright.bond.internal.choice.ExclusionNetwork;
import org.coursewright.bond.internal.choice.TableAlgebra;
import org.coursewright.bond.internal.choice.UndominatedChoices;
import org.coursewright.bond.internal.choice.WallCost;
import org.coursewright.bond.internal.choice.WorkLimit;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.measure.Progress;

/**
 * Proves how many cuts every layout of a wall needs that has no avoidable lap violation. In every layout every run is
 * filled by one of its choices; some choices of a run are excluded by joints that are there however its neighbours are
 * filled, some of two runs exclude one another. The least sum of cuts that nothing excludes is a bound, because every
 * layout is among what is minimised over. Only what such a least sum rests on is looked into, and the sum is taken again
 * until it rests on nothing that is excluded.
 */
public final class CutBound {

    /** A bound that has not settled by then is nearly always as good as it will be. */
    private static final int MOST_ROUNDS = 150;
    /** The same once choices have been told apart, in a wall that is not small. */
    private static final int MOST_ROUNDS_APART = 60;

    /** Other choices of the same cost that are looked into before the sum is taken again. */
    private static final int MOST_NEARBY = 60;
    /** How often choices are told apart. */
    private static final int MOST_SPLITS = 24;
    /** Where more cuts are missing than so many the bound is seldom reached, and is sought for a shorter time. */
    private static final int MOST_MISSING = 3;
    private static final int MOST_SPLITS_WIDE = 3;
    /** Of a small wall, so often that every run comes to patterns. */
    private static final int MOST_SPLITS_SMALL = 300;
    private static final int MOST_CHOICES_SMALL = 3000;
    /** A shape with so many choices is not told apart further: eliminating its runs would take too long. */
    private static final int MOST_CHOICES = 300;

    /** Once choices have been told apart, a run that takes more is not eliminated: the bound is left as it is. */
    private static final long MOST_SPLIT_WORK = 400_000;
    /** Sums looked at in all; that is counted, not timed, so that bounds are alike on every machine. */
    private static final long MOST_WORK = 30_000_000;

    private record Place(RunShape shape, List<Long> joints) {
    }

    private final RunStack stack;
    private final PatternsFound found = new PatternsFound();
    private final PairBound pairs;
    private final StarBound stars;
    private UndominatedChoices undominated = UndominatedChoices.inOrder();
    private final WorkLimit work = new WorkLimit(MOST_WORK);
    private TableAlgebra algebra = new TableAlgebra(work);
    private final Map<Place, Integer> leastExtra = new HashMap<>();
    private final Set<List<Object>> suited = new HashSet<>();
    private final Map<List<Object>, long[]> own = new HashMap<>();
    private List<RunChoice> chosen = List.of();
    /** What the last least sum rests on. */
    private List<RunChoice> now = List.of();
    private int most;
    private long mostWork = CostNetwork.MOST_WORK;

    /** @param stack the runs of the wall */
    public CutBound(RunStack stack) {
        this.stack = stack;
        LevelFit levels = new LevelFit(stack, found);
        pairs = new PairBound(stack, levels, found);
        stars = new StarBound(stack, pairs, levels, found);
    }

    /** The bound without telling choices apart any further. */
    public CutProof prove(Progress progress) {
        settle(progress);
        return proof();
    }

    /** Tells choices apart further until the bound reaches so many cuts, as long as that goes on soon enough. */
    public CutProof refine(int wanted, Progress progress) {
        int splits = 0;
        boolean settled = settle(progress);
        mostWork = MOST_SPLIT_WORK;
        while (isWorthwhile(wanted - stack.leastCuts() - most, splits) && settled && (split(false) || split(true))) {
            settled = settle(progress);
            splits++;
        }
        return proof();
    }

    private boolean isWorthwhile(int missing, int splits) {
        int worthwhile = missing > MOST_MISSING ? MOST_SPLITS_WIDE : MOST_SPLITS;
        return missing > 0 && splits < (stack.isSmall() ? MOST_SPLITS_SMALL : worthwhile);
    }

    /** The bound again, with what another least sum rests on. */
    public CutProof vary(Progress progress) {
        undominated = UndominatedChoices.shuffled();
        algebra = new TableAlgebra(work);
        settle(progress);
        return proof();
    }

    private CutProof proof() {
        return new CutProof(stack.leastCuts() + most, chosen, found.byShape());
    }

    /** @return whether the least sum rests on nothing that is excluded */
    private boolean settle(Progress progress) {
        boolean settled = false;
        boolean exact = true;
        int rounds = mostWork < CostNetwork.MOST_WORK && !stack.isSmall() ? MOST_ROUNDS_APART : MOST_ROUNDS;
        for (int round = 0; round < rounds && !settled; round++) {
            ExclusionNetwork network = network(progress);
            int[] values = network.solve(progress);
            exact = network.isExact();
            if (!exact && mostWork < CostNetwork.MOST_WORK || work.isSpent()) {
                now = choices(values);
                return false;
            }
            settled = settle(values, exact, progress);
        }
        return settled && exact;
    }

    /** @return whether these choices, or others that cost as much, rest on nothing that is excluded */
    private boolean settle(int[] values, boolean exact, Progress progress) {
        Optional<int[]> tried = Optional.of(values);
        for (int times = 0; times < MOST_NEARBY && tried.isPresent(); times++) {
            now = choices(tried.get());
            int extra = exact ? now.stream().mapToInt(RunChoice::extra).sum() : 0;
            if (extra >= most) {
                most = extra;
                chosen = now;
            }
            if (!exclude(tried.get(), progress) && !stars.excludes(tried.get())) {
                return true;
            }
            tried = nearby().find(tried.get());
        }
        return false;
    }

    private NearbyChoices nearby() {
        int[] least = IntStream.range(0, stack.runs().size()).map(run -> leastExtra.getOrDefault(place(run), 0))
                .toArray();
        return new NearbyChoices(stack, pairs, stars, least);
    }

    /**
     * Splits the choices that the least sum rests on.
     *
     * @param last whether choices are split that come to very many, as nothing else is left
     * @return whether there is any that can be
     */
    private boolean split(boolean last) {
        Map<RunShape, Set<RunChoice>> wanted = new LinkedHashMap<>();
        for (int run = 0; run < now.size(); run++) {
            wanted.computeIfAbsent(stack.pool(run).shape(), shape -> new HashSet<>()).add(now.get(run));
        }
        boolean any = false;
        for (int run = 0; run < now.size(); run++) {
            PatternPool pool = stack.pool(run);
            Set<RunChoice> apart = wanted.remove(pool.shape());
            any |= apart != null && split(pool, apart, last);
        }
        own.clear();
        algebra = new TableAlgebra(work);
        return any;
    }

    private boolean split(PatternPool pool, Set<RunChoice> apart, boolean last) {
        List<RunChoice> before = pairs.choices(pool);
        List<RunChoice> after = new ArrayList<>();
        List<Integer> parts = new ArrayList<>();
        for (int index = 0; index < before.size(); index++) {
            RunChoice choice = before.get(index);
            List<RunChoice> split = apart.contains(choice)
                    && before.size() < (stack.isSmall() ? MOST_CHOICES_SMALL : MOST_CHOICES)
                            ? choice.split(pool, last)
                            : List.<RunChoice>of();
            List<RunChoice> each = split.isEmpty() ? List.of(choice) : split;
            after.addAll(each);
            parts.addAll(Collections.nCopies(each.size(), index));
        }
        if (after.equals(before)) {
            return false;
        }
        int[] partOf = parts.stream().mapToInt(Integer::intValue).toArray();
        pairs.split(pool.shape(), after, partOf);
        stars.split(pool.shape(), partOf);
        return true;
    }

    private List<RunChoice> choices(int[] values) {
        List<RunChoice> choices = new ArrayList<>();
        for (int run = 0; run < values.length; run++) {
            choices.add(pairs.choices(stack.pool(run)).get(values[run]));
        }
        return choices;
    }

    private ExclusionNetwork network(Progress progress) {
        long[][] alone = new long[stack.runs().size()][];
        for (int run = 0; run < alone.length; run++) {
            PatternPool pool = stack.pool(run);
            int least = leastExtra.getOrDefault(place(run), 0);
            alone[run] = own.computeIfAbsent(List.of(pool.shape(), least), key -> costs(pairs.choices(pool), least));
        }
        ExclusionNetwork network = new ExclusionNetwork(alone, undominated, algebra, mostWork);
        for (RunStack.Contact contact : stack.contacts()) {
            progress.checkCancelled();
            network.add(new int[]{contact.below(), contact.above()}, pairs.of(contact).exclusions());
        }
        stars.addTo(network);
        return network;
    }

    /** What is excluded costs more than any number of cuts. */
    private static long[] costs(List<RunChoice> choices, int least) {
        return choices.stream()
                .mapToLong(choice -> WallCost.of(choice.extra() < least ? 1 : 0, choice.extra(), 0)).toArray();
    }

    /** @return whether anything of these choices is excluded that was not known to be */
    private boolean exclude(int[] values, Progress progress) {
        boolean any = false;
        boolean[] fails = new boolean[values.length];
        for (int run = 0; run < values.length; run++) {
            progress.checkCancelled();
            fails[run] = isExcluded(run, extra(run, values));
            any |= fails[run];
        }
        for (RunStack.Contact contact : stack.contacts()) {
            progress.checkCancelled();
            if (!fails[contact.below()] && !fails[contact.above()]) {
                any |= pairs.of(contact).excludes(values[contact.below()], values[contact.above()]);
            }
        }
        return any;
    }

    /** Whether so few extra cuts do not suit the joints that are there however the neighbours are filled. */
    private boolean isExcluded(int run, int extra) {
        Place place = place(run);
        if (place.joints().isEmpty() || extra == RunChoice.MOST_EXTRA || suited.contains(List.of(place, extra))) {
            return false;
        }
        int least = leastExtra.getOrDefault(place, 0);
        if (extra >= least && stack.pool(run).mayFill(stack.skeleton().certain(run), stack.skeleton().forced(run),
                extra, pattern -> found.add(place.shape(), pattern))) {
            suited.add(List.of(place, extra));
            return false;
        }
        leastExtra.put(place, Math.max(least, extra + 1));
        return true;
    }

    private int extra(int run, int[] values) {
        return pairs.choices(stack.pool(run)).get(values[run]).extra();
    }

    private Place place(int run) {
        return new Place(stack.pool(run).shape(), stack.skeleton().joints(run));
    }
}
