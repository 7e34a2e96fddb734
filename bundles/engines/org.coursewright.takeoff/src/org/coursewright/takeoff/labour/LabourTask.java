package org.coursewright.takeoff.labour;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;

/**
 * A task with the conditions under which it is done.
 *
 * @param productivity under plain conditions; with a learning curve, that of the first repetition
 * @param crew who does it
 * @param work what there is to do
 * @param heights how output changes with height
 * @param conditions by which output is multiplied everywhere, such as 0.8 for many openings; greater than zero
 * @param learning how the crew gets faster, if it does
 */
public record LabourTask(Productivity productivity, Crew crew, List<WorkPortion> work, HeightFactors heights,
        Fraction conditions, Optional<LearningCurve> learning) {

    private static final Formula CREW_HOURS = new Formula("labour.crewHours",
            "Σ(quantity ÷ heightOutput) × hoursPerUnit × learning ÷ conditions", "common practice, no source");
    private static final Formula TRADE_HOURS = new Formula("labour.tradeHours",
            "Σ(quantity ÷ heightOutput) × hoursPerUnit × learning ÷ conditions × members",
            "common practice, no source");

    public LabourTask {
        Objects.requireNonNull(productivity, "productivity");
        Objects.requireNonNull(crew, "crew");
        work = List.copyOf(work);
        Objects.requireNonNull(heights, "heights");
        Objects.requireNonNull(learning, "learning");
        require(conditions.signum() > 0, "Conditions multiply the output of %s by %s: give more than zero.",
                productivity.task(), conditions.toDecimal());
    }

    /** @return quantity of all portions, in the unit of the task */
    public Fraction quantity() {
        return work.stream().map(WorkPortion::quantity).reduce(Fraction.ZERO, Fraction::plus);
    }

    /** @return hours that the crew works on a portion; those of all portions add up to {@link #crewHours()} exactly */
    public Fraction crewHours(WorkPortion portion) {
        return atPlainHeight(portion).times(hoursPerUnit());
    }

    /** @return hours that the crew works */
    public Fraction crewHours() {
        return atPlainHeight(work).times(hoursPerUnit());
    }

    /** @return the hours of the crew, then those of each trade in it, in the order of the crew */
    public List<Figure> figures() {
        return figures(work);
    }

    /**
     * The hours of a part of the work, the crew having learned on all of it.
     *
     * @param part some portions of this task
     * @return the hours of the crew, then those of each trade in it; those of all parts add up to {@link #figures()}
     */
    public List<Figure> figures(List<WorkPortion> part) {
        Fraction plain = atPlainHeight(part);
        Fraction hours = plain.times(hoursPerUnit());
        List<String> elements = part.stream().map(WorkPortion::element).toList();
        List<Figure> figures = new ArrayList<>();
        List<TraceInput> inputs = List.of(TraceInput.of("Σ(quantity ÷ heightOutput)", plain),
                TraceInput.of("hoursPerUnit", productivity.hoursPerUnit()),
                TraceInput.of("learning", learningFactor()), TraceInput.of("conditions", conditions));
        figures.add(hours(crew.name(), hours, new Trace(CREW_HOURS, inputs, elements)));
        for (Crew.Member member : crew.members()) {
            List<TraceInput> ofMember = new ArrayList<>(inputs);
            ofMember.add(TraceInput.of("members", member.count()));
            figures.add(hours(member.trade(), hours.times(member.count()), new Trace(TRADE_HOURS, ofMember, elements)));
        }
        return List.copyOf(figures);
    }

    private Fraction hoursPerUnit() {
        return productivity.hoursPerUnit().times(learningFactor()).dividedBy(conditions);
    }

    private Fraction learningFactor() {
        return learning.map(curve -> curve.averageFactor(quantity())).orElse(Fraction.ONE);
    }

    /** The quantity that takes as long at plain height. */
    private Fraction atPlainHeight(List<WorkPortion> part) {
        return part.stream().map(this::atPlainHeight).reduce(Fraction.ZERO, Fraction::plus);
    }

    private Fraction atPlainHeight(WorkPortion portion) {
        return portion.quantity().dividedBy(heights.at(portion.height()));
    }

    private static Figure hours(String item, Fraction hours, Trace trace) {
        return new Figure(item, Quantity.of(hours.toDecimal(), UnitCode.HOUR), trace);
    }
}
