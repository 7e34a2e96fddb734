package org.coursewright.core.fit;

import java.util.List;
import java.util.Objects;
import java.util.Set;

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
 * Finds changes of a project's dimensions that spare cuts. Openings and walls may change within their tolerances, walls
 * that end in the open and have none within that of the settings, in quarters of an inch or in 5 mm. What is proposed has been tried on a copy of
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
        AdviceRequest request = request(project, translation, settings, progress);
        Advice advice = advisor.advise(request, progress);
        FitTrial trial = new FitTrial(project);
        for (Set<String> strays = trial.strays(advice); !strays.isEmpty(); strays = trial.strays(advice)) {
            request = without(request, strays);
            advice = advisor.advise(request, progress);
        }
        return outcome(advice, savings, translation);
    }

    private static AdviceRequest request(Project project, Translation translation, FitSettings settings,
            Progress progress) {
        Length step = project.getDisplayUnit() == DisplayUnit.MILLIMETRE ? FIVE_MILLIMETRES : QUARTER_INCH;
        List<KeepClear> keepClear = translation.abutments().stream()
                .map(each -> new KeepClear(each.wall(), each.from(), each.to())).toList();
        return new AdviceRequest(translation.request(), new Tolerances(project, translation, settings).adjustables(),
                new MoveTolerances(project, step).moves(settings, progress), keepClear, step,
                settings.budget());
    }

    /** The same, but that walls which do not read back as they were laid stay as they are. */
    private static AdviceRequest without(AdviceRequest request, Set<String> walls) {
        return new AdviceRequest(request.building(),
                request.adjustables().stream().filter(each -> !walls.contains(each.wall())).toList(),
                request.moves().stream().filter(each -> !walls.contains(each.adjustable().wall())).toList(),
                request.keepClear(), request.step(), request.budget());
    }

    private static FitOutcome outcome(Advice advice, Savings savings, Translation translation) {
        return new FitOutcome(advice, advice.proposals().stream().map(savings::of).toList(),
                savings.of(advice.before(), advice.after()), translation.findings());
    }
}
