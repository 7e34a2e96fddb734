package org.coursewright.core.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import org.coursewright.core.takeoff.MeasuredWall;
import org.coursewright.core.takeoff.Measurement;
import org.coursewright.core.takeoff.WallBrief;
import org.coursewright.measure.Length;
import org.coursewright.measure.Money;
import org.coursewright.measure.Progress;
import org.coursewright.takeoff.nesting.CutPlanner;
import org.coursewright.takeoff.nesting.MakeOrCut;
import org.coursewright.takeoff.nesting.SpecialOffer;
import org.coursewright.takeoff.quantities.UnitOrder;

/**
 * For every length that is cut, whether to have it as a special; for every special, whether to cut it instead.
 *
 * @param lines by unit type, bond and length; empty where units or cuts have no price
 */
public record MakeOrCutReport(List<MakeOrCutLine> lines) {

    /** Rates call what a special costs once by this. */
    static final String SET_UP = "special set-up";

    public MakeOrCutReport {
        lines = List.copyOf(lines);
    }

    static MakeOrCutReport of(Measurement measurement, CostBrief brief, Progress progress) {
        List<MakeOrCutLine> lines = new ArrayList<>();
        for (UnitOrder order : measurement.quantities().units()) {
            new PiecePricing(brief).of(order.unit()).ifPresent(costs -> new ForOrder(measurement, brief, order, costs,
                    progress).addTo(lines));
        }
        return new MakeOrCutReport(lines);
    }

    /** The comparisons of one unit type in one bond. */
    private record ForOrder(Measurement measurement, CostBrief brief, UnitOrder order, PieceCosts costs,
            Progress progress) {

        void addTo(List<MakeOrCutLine> lines) {
            order.pieces().cuts().keySet().forEach(length -> compare(length, false).ifPresent(lines::add));
            order.pieces().specials().keySet().forEach(length -> compare(length, true).ifPresent(lines::add));
        }

        private Optional<MakeOrCutLine> compare(Length length, boolean stocked) {
            SortedMap<Length, Long> cuts = new TreeMap<>(order.pieces().cuts());
            if (stocked) {
                cuts.merge(length, order.pieces().specials().get(length), Long::sum);
            }
            Optional<PiecePricing.Priced> special = new PiecePricing(brief).unit(order.unit(), length);
            boolean own = special.isPresent();
            Money price = special.map(PiecePricing.Priced::cost).orElse(costs.unit());
            SpecialOffer offer = new SpecialOffer(length, costs.unit(), costs.cut(), price, setUp());
            return length.isLessThan(order.face())
                    ? Optional.of(
                            line(MakeOrCut.compare(order.cutting().stock(), cuts, offer, new CutPlanner(), progress),
                                    stocked, own ? "special by its own price" : "special at the price of a whole unit"))
                    : Optional.empty();
        }

        private Money setUp() {
            return brief.rate(SET_UP).map(rate -> rate.rate().price()).filter(price -> price.currency().equals(brief
                    .currency()) && price.amount().signum() >= 0).orElse(new Money(BigDecimal.ZERO, brief.currency()));
        }

        private MakeOrCutLine line(MakeOrCut compared, boolean stocked, String note) {
            return new MakeOrCutLine(order.unit().type(), bond(), compared.offer().length(), stocked, compared.pieces(),
                    compared.unitsSaved(), compared.cutting(), compared.making(), compared.breakEven(), compared
                            .makingPays(),
                    note);
        }

        private String bond() {
            return measurement.walls().stream().map(MeasuredWall::brief).filter(wall -> order.walls().contains(wall
                    .mark())).map(WallBrief::bond).findFirst().orElse("");
        }
    }
}
