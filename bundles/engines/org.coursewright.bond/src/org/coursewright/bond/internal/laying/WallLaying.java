package org.coursewright.bond.internal.laying;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.ShortLap;
import org.coursewright.bond.UnfillableReason;
import org.coursewright.bond.UnfillableRun;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.lap.StraightJoints;
import org.coursewright.bond.internal.pieces.FillableLengths;
import org.coursewright.bond.internal.proof.CutBound;
import org.coursewright.bond.internal.proof.CutProof;
import org.coursewright.bond.internal.proof.Prover;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunFinder;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.run.RunSpan;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;
import org.coursewright.measure.Progress;

/** Lays one wall whose corners are handed. */
public final class WallLaying {

    private final WallFace wall;
    private final Handing handing;
    private final RunStack stack;
    private final Map<RunShape, Set<Pattern>> laidWith = new LinkedHashMap<>();
    private StackLayout layout;

    /** Prepares to lay the wall; its runs are found already. */
    public WallLaying(WallFace wall, Handing handing) {
        this.wall = wall;
        this.handing = handing;
        stack = stack();
    }

    private RunStack stack() {
        return new RunStack(Masonry.of(wall.stock(), wall.rule()), new RunFinder(wall, handing).find());
    }

    /** Cuts of every layout that has no avoidable short lap. The proof works on runs of its own: it owes nothing to a layout. */
    public CutProof prove(Progress progress) {
        return new CutBound(stack()).prove(progress);
    }

    /**
     * Begins to lay the wall.
     *
     * @param prover gives what {@link #prove} gives, now or before
     * @return whether what there is after a first look cannot be bettered; {@link #lay} asks for no proof then
     */
    public boolean begin(Supplier<CutProof> prover, Progress progress) {
        layout = new StackLayout(stack, prover(prover, progress), progress);
        return layout.begin();
    }

    /** Goes on after {@link #begin}. */
    public WallLayout lay() {
        return laid(layout.lay());
    }

    /** By shape of run, the patterns that were tried. */
    public Map<RunShape, List<Pattern>> tried() {
        return stack.patterns();
    }

    /** Whether {@link #layBetter} may help. */
    public boolean mayBeBetter() {
        return layout.mayBeBetter();
    }

    /**
     * Lays the wall better, or proves that it cannot be, where {@link #lay} has done neither; that takes longer.
     *
     * @param tried what had been {@link #tried} then
     */
    public WallLayout layBetter(Map<RunShape, List<Pattern>> tried, Progress progress) {
        stack.add(tried);
        layout = new StackLayout(stack, prover(() -> prove(progress), progress), progress);
        return laid(layout.layBetter());
    }

    /**
     * A first answer: less is tried, and nothing is proven that is not plain.
     *
     * @param tried by shape of run, patterns that may do again
     */
    public WallLayout laySoon(Map<RunShape, List<Pattern>> tried, Progress progress) {
        stack.add(tried);
        layout = new StackLayout(stack, prover(() -> prove(progress), progress), progress);
        return laid(layout.laySoon());
    }

    private Prover prover(Supplier<CutProof> known, Progress progress) {
        return new Prover() {
            @Override
            public CutProof prove() {
                return known.get();
            }

            @Override
            public CutProof refine(int wanted) {
                return new CutBound(stack()).refine(wanted, progress);
            }

            @Override
            public CutProof vary() {
                return new CutBound(stack()).vary(progress);
            }
        };
    }

    private WallLayout laid(List<Pattern> patterns) {
        laidWith.clear();
        for (int run = 0; run < patterns.size(); run++) {
            laidWith.computeIfAbsent(stack.pool(run).shape(), shape -> new LinkedHashSet<>()).add(patterns.get(run));
        }
        int cuts = patterns.stream().mapToInt(Pattern::cuts).sum();
        List<CourseLayout> courses = courses(patterns);
        return new WallLayout(wall.mark(), courses, cuts, ShortLap.in(wall, courses), straightJoints(), unfillable(),
                layout.isMet(), layout.bound());
    }

    /** By shape of run, what the runs have been laid with. */
    public Map<RunShape, List<Pattern>> patterns() {
        Map<RunShape, List<Pattern>> patterns = new LinkedHashMap<>();
        laidWith.forEach((shape, each) -> patterns.put(shape, List.copyOf(each)));
        return patterns;
    }

    private int straightJoints() {
        List<RunSpan> runs = stack.runs();
        return stack.contacts().stream()
                .mapToInt(contact -> StraightJoints.between(runs.get(contact.below()), runs.get(contact.above())))
                .sum();
    }

    private List<CourseLayout> courses(List<Pattern> patterns) {
        List<List<Run>> runs = new ArrayList<>();
        wall.courses().forEach(course -> runs.add(new ArrayList<>()));
        for (int run = 0; run < patterns.size(); run++) {
            RunSpan span = stack.runs().get(run);
            runs.get(span.course()).add(run(span, patterns.get(run)));
        }
        List<CourseLayout> courses = new ArrayList<>();
        for (int course = 0; course < runs.size(); course++) {
            courses.add(new CourseLayout(wall.courses().get(course), runs.get(course)));
        }
        return courses;
    }

    private static Run run(RunSpan span, Pattern pattern) {
        List<Piece> pieces = new ArrayList<>();
        for (int piece = 0; piece < pattern.pieces().length; piece++) {
            pieces.add(new Piece(Length.ofUnits(pattern.pieces()[piece]), pattern.kinds()[piece]));
        }
        Optional<LengthRatio> joint = pattern.joints() == 0
                ? Optional.empty()
                : Optional.of(new LengthRatio(Length.ofUnits(pattern.jointTotal()), pattern.joints()));
        return new Run(Length.ofUnits(span.from()), Length.ofUnits(span.to()), span.start(), span.end(), joint,
                pattern.joints(), pieces);
    }

    private List<UnfillableRun> unfillable() {
        return stack.unfillable().stream().map(this::unfillable).toList();
    }

    private UnfillableReason reason(RunSpan span, FillableLengths lengths) {
        boolean pinned = !span.pins().isEmpty() && stack.isFillableUnpinned(span);
        return pinned ? new UnfillableReason.PinNotKept() : lengths.reason(span.shape());
    }

    private UnfillableRun unfillable(RunSpan span) {
        FillableLengths lengths = new FillableLengths(stack.masonry());
        return new UnfillableRun(wall.courses().get(span.course()).number(), Length.ofUnits(span.from()),
                Length.ofUnits(span.to()), span.start(), span.end(), reason(span, lengths),
                lengths.nearest(span.shape()));
    }
}
