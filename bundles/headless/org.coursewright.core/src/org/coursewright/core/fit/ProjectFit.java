package org.coursewright.core.fit;

import java.util.List;
import java.util.Objects;
import java.util.Set;

import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.Advice;
import org.coursewright.bond.advice.AdviceRequest;
import org.coursewright.bond.advice.BondAdvisor;
import org.coursewright.bond.advice.KeepClear;
import org.coursewright.core.bond.BondTranslator;
import org.coursewright.core.bond.Translation;
import org.coursewright.core.cost.PieceCostBook;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;

/**
 * Finds changes of a project's dimensions that spare cuts. Openings may change within their tolerances, walls that end in
 * the open within that of the settings, in quarters of an inch or in 5 mm. What is proposed has been tried on a copy of
 * the project: it reads back as what was laid.
 */
public final class ProjectFit {

    private static final Length QUARTER_INCH = Length.ofInchFraction(1, 4);
    private static final Length FIVE_MILLIMETRES = Length.ofMillimetres(5);

    private final BondAdvisor advisor;

    /** @param advisor the engine to ask, not null */
    public ProjectFit(BondAdvisor advisor) {
        this.advisor = Objects.requireNonNull(advisor, "advisor");
    }

    /**
     * Advises on a project.
     *
     * @param project the project, not null, read on this thread; it is not changed
     * @param settings what may be proposed, not null
     * @param progress hears how far the work is and may cancel it, not null
     * @return the advice
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public FitOutcome advise(Project project, FitSettings settings, Progress progress) {
        Translation translation = BondTranslator.translate(project);
        Savings savings = new Savings(new UnitCount(translation.request(), progress), new UnitRates(settings.rate(),
                PieceCostBook.of(project), new ProjectWalls(project)));
        List<Adjustable> adjustables = new Tolerances(project, translation, settings).adjustables();
        Advice advice = advise(project, translation, adjustables, settings, progress);
        FitTrial trial = new FitTrial(project);
        for (Set<String> strays = trial.strays(advice); !strays.isEmpty(); strays = trial.strays(advice)) {
            Set<String> left = strays;
            adjustables = adjustables.stream().filter(each -> !left.contains(each.wall())).toList();
            advice = advise(project, translation, adjustables, settings, progress);
        }
        return outcome(advice, savings, translation);
    }

    private Advice advise(Project project, Translation translation, List<Adjustable> adjustables, FitSettings settings,
            Progress progress) {
        Length step = project.getDisplayUnit() == DisplayUnit.MILLIMETRE ? FIVE_MILLIMETRES : QUARTER_INCH;
        List<KeepClear> keepClear = translation.abutments().stream()
                .map(each -> new KeepClear(each.wall(), each.from(), each.to())).toList();
        return advisor.advise(
                new AdviceRequest(translation.request(), adjustables, keepClear, step, settings.budget()), progress);
    }

    private static FitOutcome outcome(Advice advice, Savings savings, Translation translation) {
        return new FitOutcome(advice, advice.proposals().stream().map(savings::of).toList(),
                savings.of(advice.before(), advice.after()), translation.findings());
    }
}
