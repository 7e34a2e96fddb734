package org.coursewright.core.cost;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.validity.NumberValidity;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.model.catalogue.CrewType;
import org.coursewright.model.catalogue.Plant;
import org.coursewright.model.estimate.HeightBand;
import org.coursewright.model.estimate.LearningTheory;
import org.coursewright.model.estimate.Task;
import org.coursewright.model.estimate.WorkKind;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.InvalidTakeoffException;
import org.coursewright.takeoff.cost.UnitConversion;
import org.coursewright.takeoff.labour.Crew;
import org.coursewright.takeoff.labour.HeightFactors;
import org.coursewright.takeoff.labour.LearningCurve;
import org.coursewright.takeoff.labour.Productivity;

/** Reads how work is done; the first task of a kind counts. */
final class TaskReader {

    /** Repetitions are summed up one by one. */
    private static final int MOST_REPETITIONS = 100_000;

    private final Findings findings;
    private final RangeReader ranges;

    TaskReader(Findings findings) {
        this.findings = findings;
        this.ranges = new RangeReader(findings);
    }

    Map<WorkKind, TaskBrief> read(List<Task> tasks) {
        Map<WorkKind, TaskBrief> briefs = new EnumMap<>(WorkKind.class);
        for (Task task : tasks) {
            ElementReference element = ElementReference.of(task, "task " + task.getMark());
            if (briefs.containsKey(task.getKind())) {
                findings.warning("task.twice", element,
                        "Another task says how to %s. Take one of them out; the first counts."
                                .formatted(Work.of(task.getKind()).words()));
            } else {
                sound(element, () -> brief(task, element)).ifPresent(brief -> briefs.put(task.getKind(), brief));
            }
        }
        return briefs;
    }

    private TaskBrief brief(Task task, ElementReference element) {
        NumberValidity numbers = new NumberValidity(element, findings);
        return new TaskBrief(task.getKind(), Optional.ofNullable(task.getCrew()).flatMap(TaskReader::crew),
                Optional.ofNullable(task.getPlant()).filter(plant -> plant.getMark() != null).map(this::plant),
                productivity(task, element), heights(task, numbers),
                numbers.positive("output on this site", task.getConditionsShare()).orElse(Fraction.ONE),
                learning(task, numbers), ranges.read(task, element));
    }

    private static Optional<Crew> crew(CrewType type) {
        List<Crew.Member> members = type.getMembers().stream().map(member -> new Crew.Member(String.valueOf(member
                .getTrade()), Fraction.of(member.getCount()))).toList();
        return members.isEmpty() ? Optional.empty() : Optional.of(new Crew(String.valueOf(type.getMark()), members));
    }

    private PlantBrief plant(Plant plant) {
        NumberValidity numbers = new NumberValidity(ElementReference.of(plant, "plant " + plant.getMark()), findings);
        return new PlantBrief(plant.getMark(), Optional.ofNullable(plant.getOutput()),
                numbers.share("lost share", plant.getLostShare()).filter(share -> share.compareTo(Fraction.ONE) < 0)
                        .orElse(Fraction.ZERO));
    }

    private Optional<Productivity> productivity(Task task, ElementReference element) {
        if (task.getOutput() == null) {
            return Optional.empty();
        }
        UnitCode unit = Work.of(task.getKind()).unit();
        Optional<Fraction> output = perHour(task.getOutput(), unit);
        if (output.isEmpty()) {
            findings.error("task.output", element,
                    "Its output of %s an hour cannot be used. Give a number above 0 in %s."
                            .formatted(task.getOutput(), unit.code()));
        }
        return output.map(each -> Productivity.perDay(String.valueOf(task.getMark()), unit, each, Fraction.ONE,
                Optional.ofNullable(task.getSource()).orElse("common practice, no source")));
    }

    /** @return an output above zero in a unit of work, or empty if it does not compare */
    static Optional<Fraction> perHour(Quantity output, UnitCode unit) {
        return Optional.of(output).filter(each -> NumberValidity.isReckonable(each.value()))
                .flatMap(each -> UnitConversion.convert(each, unit)).map(each -> Fraction.of(each.value()))
                .filter(each -> each.signum() > 0);
    }

    private HeightFactors heights(Task task, NumberValidity numbers) {
        List<HeightFactors.Band> bands = task.getBands().stream().map(band -> band(band, numbers)).toList();
        return bands.isEmpty() ? HeightFactors.NONE : new HeightFactors(bands);
    }

    private static HeightFactors.Band band(HeightBand band, NumberValidity numbers) {
        return new HeightFactors.Band(band.getFrom(), numbers.positive("output at a height", band.getOutputShare())
                .orElse(Fraction.ONE));
    }

    private Optional<LearningCurve> learning(Task task, NumberValidity numbers) {
        return numbers.positive("learning", task.getLearningShare()).map(share -> new LearningCurve(share,
                task.getLearningTheory() == LearningTheory.CUMULATIVE_AVERAGE
                        ? LearningCurve.Theory.CUMULATIVE_AVERAGE
                        : LearningCurve.Theory.UNIT,
                numbers.positive("repetition", task.getLearningRepetition()).orElse(Fraction.ONE), Math.min(task
                        .getLearningPlateau(), MOST_REPETITIONS)));
    }

    private <T> Optional<T> sound(ElementReference element, Supplier<T> made) {
        try {
            return Optional.of(made.get());
        } catch (InvalidTakeoffException e) {
            findings.error("task.unsound", element, e.getMessage());
            return Optional.empty();
        }
    }
}
