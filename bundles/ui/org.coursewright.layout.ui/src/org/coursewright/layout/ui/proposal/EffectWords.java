package org.coursewright.layout.ui.proposal;

import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

import org.coursewright.core.trial.ProposalTrial.Count;
import org.coursewright.core.trial.ProposalTrial.Effect;
import org.coursewright.measure.Money;
import org.eclipse.osgi.util.NLS;

/**
 * What accepting proposals changes in the whole building, in sentences.
 *
 * @param effect of accepting
 */
record EffectWords(Effect effect) {

    /**
     * @param what the proposals are called
     * @return cuts, laps and price, before and after
     */
    String of(String what) {
        Count before = effect.before();
        Count after = effect.after();
        String open = before.open() + after.open() == 0
                ? ""
                : NLS.bind(ProposalText.effectOpen, before.open(), after.open());
        return NLS.bind(ProposalText.effect, new Object[]{what, before.cuts(), after.cuts(), before.laps(), after
                .laps()}) + open + price();
    }

    private String price() {
        if (effect.before().price().isEmpty() || effect.after().price().isEmpty()) {
            return ProposalText.effectNoPrice;
        }
        Money before = effect.before().price().get().rounded();
        Money after = effect.after().price().get().rounded();
        boolean complete = effect.before().complete() && effect.after().complete();
        return NLS.bind(ProposalText.effectPrice, new Object[]{money(before), money(after), difference(after.minus(
                before))}) + (complete ? "" : ProposalText.effectIncomplete);
    }

    private static String difference(Money more) {
        if (more.amount().signum() == 0) {
            return ProposalText.sameMoney;
        }
        Money abs = new Money(more.amount().abs(), more.currency());
        return NLS.bind(more.amount().signum() < 0 ? ProposalText.lessMoney : ProposalText.moreMoney, money(abs));
    }

    private static String money(Money money) {
        return number(money.amount()) + " " + money.currency().getCurrencyCode();
    }

    private static String number(BigDecimal amount) {
        DecimalFormat format = new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(Locale.ROOT));
        format.setMinimumFractionDigits(amount.scale());
        format.setMaximumFractionDigits(amount.scale());
        return format.format(amount);
    }
}
