package org.coursewright.core.proposal;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

import org.coursewright.core.fit.Saving;
import org.coursewright.measure.Money;

/**
 * What a change spares and what it takes, as it is told to the architect: to the minute and to the smallest coin.
 *
 * @param saving of the change
 */
record SavingWords(Saving saving) {

    /** The cost stands beside prices of the whole building, which have taxes, overhead and contingency. */
    private static final String BEFORE_MARK_UPS = " before mark-ups";

    /** A sentence with what is spared, then what more is taken; nothing that stays the same. */
    String text() {
        List<String> spared = new ArrayList<>();
        List<String> taken = new ArrayList<>();
        count(saving.cuts(), "cut piece", spared, taken);
        count(saving.laps(), "short lap", spared, taken);
        count(saving.blocks(), "block", spared, taken);
        saving.minutes().map(minutes -> minutes.setScale(0, RoundingMode.HALF_UP)).ifPresent(
                minutes -> add(minutes.signum(), minutes.abs().toPlainString() + " min", spared, taken));
        saving.cost().map(Money::rounded).ifPresent(cost -> add(cost.amount().signum(),
                cost.amount().abs().toPlainString() + " " + cost.currency().getCurrencyCode() + BEFORE_MARK_UPS, spared,
                taken));
        return "Spares " + (spared.isEmpty() ? "nothing" : String.join(", ", spared))
                + (taken.isEmpty() ? "." : "; takes " + String.join(", ", taken) + " more.");
    }

    private static void count(long count, String what, List<String> spared, List<String> taken) {
        add(Long.signum(count), "%d %s%s".formatted(Math.abs(count), what, Math.abs(count) == 1 ? "" : "s"), spared,
                taken);
    }

    private static void add(int sign, String words, List<String> spared, List<String> taken) {
        if (sign > 0) {
            spared.add(words);
        } else if (sign < 0) {
            taken.add(words);
        }
    }
}
