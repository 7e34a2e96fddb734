package org.coursewright.core.cost;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.measure.Quantity;
import org.coursewright.model.estimate.WorkKind;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.labour.LabourTask;
import org.coursewright.takeoff.labour.PlantTask;
import org.coursewright.takeoff.labour.WorkPortion;

/** Hours that people and machines take for the work gathered. */
final class Hours {

    private final Map<WorkKind, TaskBrief> tasks;
    private final Resources resources;

    Hours(Map<WorkKind, TaskBrief> tasks, Resources resources) {
        this.tasks = tasks;
        this.resources = resources;
    }

    void add() {
        for (WorkKind kind : WorkKind.values()) {
            Work work = Work.of(kind);
            List<WorkDone> done = resources.work(work);
            TaskBrief task = tasks.get(kind);
            if (!done.isEmpty() && task == null) {
                resources.findings().warning("task.missing", Resources.named("work: " + work.words()),
                        "Nothing says who does it and how fast, so its hours are not counted. Add a task.");
            } else if (!done.isEmpty()) {
                add(work, task, done);
            }
        }
    }

    private void add(Work work, TaskBrief task, List<WorkDone> done) {
        Map<String, List<WorkPortion>> byElement = new LinkedHashMap<>();
        done.forEach(each -> byElement.computeIfAbsent(each.element(), key -> new ArrayList<>()).add(each.portion()));
        boolean manned = task.crew().isPresent() && task.productivity().isPresent();
        if (manned) {
            LabourTask labour = new LabourTask(task.productivity().get(), task.crew().get(), done.stream().map(
                    WorkDone::portion).toList(), task.heights(), task.conditions(), task.learning());
            byElement.forEach((element, part) -> crew(work, task, element, labour.figures(part)));
        }
        task.plant().filter(plant -> plant.output().isPresent()).ifPresent(plant -> byElement.forEach((element,
                part) -> plant(work, plant, element, part)));
        if (!manned && task.plant().filter(plant -> plant.output().isPresent()).isEmpty()) {
            resources.findings().warning("task.output", Resources.named("work: " + work.words()),
                    "Its task has neither a crew with an output nor a machine with one, so its hours are not counted.");
        }
    }

    /** The first figure is the crew's: a machine without an output of its own runs as long. */
    private void crew(Work work, TaskBrief task, String element, List<Figure> figures) {
        figures.subList(1, figures.size()).forEach(trade -> resources.add(trade.item(), element, work, trade.quantity(),
                trade.trace()));
        task.plant().filter(plant -> plant.output().isEmpty()).ifPresent(plant -> resources.add(plant.mark(), element,
                work, figures.get(0).quantity(), figures.get(0).trace()));
    }

    private void plant(Work work, PlantBrief plant, String element, List<WorkPortion> part) {
        Quantity output = plant.output().orElseThrow();
        Fraction quantity = part.stream().map(WorkPortion::quantity).reduce(Fraction.ZERO, Fraction::plus);
        TaskReader.perHour(output, work.unit()).ifPresentOrElse(perHour -> {
            Figure figure = new PlantTask(plant.mark(), work.unit(), quantity, perHour, plant.lost()).figure();
            Trace trace = figure.trace().from(part.stream().map(WorkPortion::element).toList());
            resources.add(plant.mark(), element, work, figure.quantity(), trace);
        }, () -> resources.findings().error("plant.output", Resources.named("plant " + plant.mark()),
                "Its output of %s an hour cannot be used to %s. Give a number above 0 in %s.".formatted(output, work
                        .words(), work.unit().code())));
    }
}
