package org.coursewright.cli.price;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.cli.BadInputException;
import org.coursewright.core.cost.CostSums;
import org.coursewright.core.cost.PriceLine;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.display.Amount;
import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.measure.LengthFormat;

/** How one line of a price came about, from its elements to its total. */
final class ShownPrice {

    private final PriceOutcome price;
    private final String wanted;

    private final Amount amounts;

    ShownPrice(PriceOutcome price, String wanted, LengthFormat lengths) {
        this.price = price;
        this.wanted = wanted.strip();
        this.amounts = new Amount(lengths);
    }

    String text() throws BadInputException {
        PriceLine line = price.lines().stream().filter(each -> String.valueOf(each.number()).equals(wanted)).findFirst()
                .orElseThrow(() -> new BadInputException("--show-me: There is no line \"%s\". Lines are 1 to %d."
                        .formatted(wanted, price.lines().size())));
        List<String> text = new ArrayList<>();
        TakeoffLine amount = line.resource().amount();
        text.add("%d %s, %s: %s".formatted(line.number(), line.resource().amount().item(),
                line.resource().work().words(),
                amounts.exact(amount.quantity())));
        text.add("element  %s, trade %s".formatted(line.element(), line.trade()));
        text.add("formula  %s = %s".formatted(amount.formula(), amount.expression()));
        text.add("source   " + amount.source());
        amount.inputs()
                .forEach(input -> text.add("input    %s = %s".formatted(amounts.inProject(input.symbol()), amounts
                        .exact(input.value()))));
        text.add("from     " + String.join(", ", amount.elements()));
        line.priced().ifPresent(priced -> text.addAll(priced(priced)));
        line.problem().ifPresent(problem -> text.add("no price " + problem));
        return String.join("\n", text);
    }

    private List<String> priced(PriceLine.Priced priced) {
        CostSums cost = priced.cost();
        return List.of("rate     %s for one %s of %s%s%s".formatted(priced.rate(), Figures.unit(priced.quantity()),
                priced.kind(), priced.asOf().map(date -> ", " + date).orElse(""),
                priced.source().isEmpty()
                        ? ""
                        : ", " + priced.source()),
                "direct   %s × %s = %s".formatted(amounts.exact(priced.quantity()), priced.rate(), cost.direct()),
                "tax      %s".formatted(cost.tax()), "overhead %s".formatted(cost.overhead()),
                "conting. %s".formatted(cost.contingency()), "total    %s".formatted(cost.total()));
    }
}
