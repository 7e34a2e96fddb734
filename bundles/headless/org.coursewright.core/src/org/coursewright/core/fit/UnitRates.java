package org.coursewright.core.fit;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.cost.PieceCostBook;
import org.coursewright.core.cost.PieceCosts;
import org.coursewright.measure.Money;

/**
 * What units, laying and cutting take in minutes and money: by what somebody said a cut takes, else by the rates of the
 * project.
 */
final class UnitRates {

    private final Optional<CutRate> rate;
    private final PieceCostBook book;
    private final ProjectWalls walls;
    private final Map<String, Optional<PieceCosts>> byWall = new HashMap<>();

    UnitRates(Optional<CutRate> rate, PieceCostBook book, ProjectWalls walls) {
        this.rate = rate;
        this.book = book;
        this.walls = walls;
    }

    /** @return minutes of people for what a wall takes; empty if nobody said */
    Optional<BigDecimal> minutes(String wall, UnitsTaken taken) {
        BigDecimal cuts = BigDecimal.valueOf(taken.cuts());
        return rate.map(each -> each.minutes().multiply(cuts)).or(() -> costs(wall).map(each -> each.cutMinutes()
                .multiply(cuts).add(each.layingMinutes().multiply(BigDecimal.valueOf(taken.pieces())))));
    }

    /** @return direct cost of what a wall takes, a special counted as a whole unit; empty if nobody said */
    Optional<Money> cost(String wall, UnitsTaken taken) {
        BigDecimal cuts = BigDecimal.valueOf(taken.cuts());
        return rate.isPresent()
                ? rate.flatMap(CutRate::cost).map(each -> each.times(cuts))
                : costs(wall).map(each -> each.cut().times(cuts)
                        .plus(each.laying().times(BigDecimal.valueOf(taken.pieces())))
                        .plus(each.unit().times(BigDecimal.valueOf(taken.blocks() + taken.specials()))));
    }

    private Optional<PieceCosts> costs(String wall) {
        return byWall.computeIfAbsent(wall, mark -> Optional.ofNullable(walls.wall(mark).getUnitType())
                .flatMap(type -> Optional.ofNullable(type.getMark())).map(book.byType()::get));
    }
}
