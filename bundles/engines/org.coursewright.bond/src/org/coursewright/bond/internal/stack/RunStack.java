package org.coursewright.bond.internal.stack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.coursewright.bond.internal.choice.WorkLimit;
import org.coursewright.bond.internal.filling.LeastCuts;
import org.coursewright.bond.internal.filling.Shortfalls;
import org.coursewright.bond.internal.lap.ForcedViolations;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.run.RunSpan;

/** The runs of one wall that can be filled, the pools they are filled from, and which of them lie on one another. */
public final class RunStack {

    /**
     * Two runs in consecutive courses near enough for their joints to lap too little.
     *
     * @param below index of the lower run
     * @param above index of the upper run
     * @param offset where the upper run begins, measured from the start of the lower
     * @param forced lap violations between them however they are filled
     */
    public record Contact(int below, int above, long offset, int forced) {

        /** The run that touches this one. */
        public int other(int run) {
            return run == below ? above : below;
        }

        /** Where the other run begins, measured from the start of this one. */
        public long offsetFrom(int run) {
            return run == below ? offset : -offset;
        }
    }

    private static final int FEW_RUNS = 12;

    private final Masonry masonry;
    private final ForcedViolations forced;
    private final LeastCuts leastCuts;
    private final Skeleton skeleton = new Skeleton(this);
    private final List<RunSpan> runs = new ArrayList<>();
    private final List<RunSpan> unfillable = new ArrayList<>();
    private final List<PatternPool> pools = new ArrayList<>();
    private final List<Contact> contacts = new ArrayList<>();
    private final List<List<Contact>> contactsOf = new ArrayList<>();
    private final Map<RunShape, PatternPool> poolByShape = new LinkedHashMap<>();

    /** @param courses the runs of each course, from the bottom up */
    public RunStack(Masonry masonry, List<List<RunSpan>> courses) {
        this.masonry = masonry;
        forced = new ForcedViolations(masonry);
        leastCuts = new LeastCuts(masonry, new Shortfalls(masonry), new WorkLimit());
        List<Integer> below = List.of();
        for (List<RunSpan> course : courses) {
            List<Integer> here = new ArrayList<>();
            for (RunSpan run : course) {
                RunShape shape = run.shape();
                OptionalInt least = leastCuts.of(shape);
                if (least.isPresent()) {
                    here.add(add(run, least.getAsInt()));
                } else {
                    unfillable.add(run);
                }
            }
            connect(below, here);
            below = here;
        }
    }

    private int add(RunSpan run, int least) {
        runs.add(run);
        pools.add(poolByShape.computeIfAbsent(run.shape(),
                shape -> new PatternPool(shape, masonry, leastCuts.filler(shape), least)));
        contactsOf.add(new ArrayList<>());
        return runs.size() - 1;
    }

    private void connect(List<Integer> below, List<Integer> above) {
        for (int lower : below) {
            for (int upper : above) {
                RunSpan first = runs.get(lower);
                RunSpan second = runs.get(upper);
                if (first.from() < second.to() + masonry.lap() && second.from() < first.to() + masonry.lap()) {
                    long offset = second.from() - first.from();
                    Contact contact = new Contact(lower, upper, offset,
                            forced.between(first.shape(), second.shape(), offset));
                    contacts.add(contact);
                    contactsOf.get(lower).add(contact);
                    contactsOf.get(upper).add(contact);
                }
            }
        }
    }

    /** The joints that are there however the runs are filled. */
    public Skeleton skeleton() {
        return skeleton;
    }

    /** Whether there are so few runs that all of them can be looked into thoroughly. */
    public boolean isSmall() {
        return runs.size() <= FEW_RUNS;
    }

    /** What the wall is laid of. */
    public Masonry masonry() {
        return masonry;
    }

    /** The runs that can be filled; everything else tells them by their index here. */
    public List<RunSpan> runs() {
        return runs;
    }

    /** Whether a run could be filled if nothing were decided about it. */
    public boolean isFillableUnpinned(RunSpan run) {
        return leastCuts.of(run.shape().withoutPins()).isPresent();
    }

    /** The runs that nothing fills. */
    public List<RunSpan> unfillable() {
        return unfillable;
    }

    /** What a run is filled from; runs of one shape share a pool. */
    public PatternPool pool(int run) {
        return pools.get(run);
    }

    /** All contacts, from the bottom up. */
    public List<Contact> contacts() {
        return contacts;
    }

    /** The contacts of one run. */
    public List<Contact> contactsOf(int run) {
        return contactsOf.get(run);
    }

    /** Fills the pools with patterns to begin with, those with the fewest cuts. */
    public void seed() {
        poolByShape.values().forEach(PatternPool::seed);
    }

    /** Adds patterns with more cuts, which laps may need. */
    public void seedMore() {
        poolByShape.values().forEach(PatternPool::seedMore);
    }

    /** Adds patterns to the pools of their shapes, if there are any. */
    public void add(Map<RunShape, List<Pattern>> patterns) {
        patterns.forEach((shape, found) -> Optional.ofNullable(poolByShape.get(shape))
                .ifPresent(pool -> found.forEach(pool::add)));
    }

    /** By shape of run, the patterns in the pools. */
    public Map<RunShape, List<Pattern>> patterns() {
        Map<RunShape, List<Pattern>> patterns = new LinkedHashMap<>();
        poolByShape.forEach((shape, pool) -> patterns.put(shape, List.copyOf(pool.patterns())));
        return patterns;
    }

    /** Cuts that every filling needs, laps left aside. */
    public int leastCuts() {
        return pools.stream().mapToInt(PatternPool::leastCuts).sum();
    }
}
