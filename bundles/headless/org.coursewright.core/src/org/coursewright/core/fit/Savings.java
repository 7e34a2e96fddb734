package org.coursewright.core.fit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.stream.IntStream;

import org.coursewright.bond.BondResult;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.Proposal;
import org.coursewright.measure.Money;

/** Works out what changes spare. */
final class Savings {

    private final UnitCount count;
    private final UnitRates rates;

    Savings(UnitCount count, UnitRates rates) {
        this.count = count;
        this.rates = rates;
    }

    /** What one change spares in the walls that it changes. */
    FitProposal of(Proposal proposal) {
        UnitsTaken before = count.by(proposal.before());
        UnitsTaken after = count.by(proposal.after());
        return new FitProposal(proposal, before, after, saving(proposal.before(), proposal.after()));
    }

    /** What all changes spare in the whole building, its walls in the same order before and after. */
    Saving of(BondResult before, BondResult after) {
        return saving(before.walls(), after.walls());
    }

    private Saving saving(List<WallLayout> before, List<WallLayout> after) {
        List<Saving> walls = IntStream.range(0, before.size())
                .mapToObj(wall -> saving(before.get(wall), after.get(wall))).toList();
        return new Saving(walls.stream().mapToInt(Saving::laps).sum(), count.by(before).minus(count.by(after)),
                sum(walls.stream().map(Saving::minutes).toList(), BigDecimal::add),
                sum(walls.stream().map(Saving::cost).toList(), Money::plus));
    }

    private Saving saving(WallLayout before, WallLayout after) {
        UnitsTaken spared = count.by(before).minus(count.by(after));
        return new Saving(before.lapViolations() - after.lapViolations(), spared,
                rates.minutes(before.mark(), spared), rates.cost(before.mark(), spared));
    }

    /** Empty if any of them is: a sum that leaves out a wall would mislead. */
    private static <T> Optional<T> sum(List<Optional<T>> parts, BinaryOperator<T> plus) {
        return parts.stream().allMatch(Optional::isPresent)
                ? parts.stream().map(Optional::orElseThrow).reduce(plus)
                : Optional.empty();
    }
}
