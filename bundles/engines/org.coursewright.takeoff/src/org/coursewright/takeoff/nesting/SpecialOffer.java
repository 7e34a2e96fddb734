package org.coursewright.takeoff.nesting;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Currency;
import java.util.List;

import org.coursewright.measure.Length;
import org.coursewright.measure.Money;

/**
 * What a special of one length would cost, pressed or bought, and what cutting the same pieces costs. All money is in one
 * currency and not negative.
 *
 * @param length of the special
 * @param unit price of a whole unit to cut from
 * @param cut one saw cut: labour, saw and blade
 * @param special price of one special
 * @param setUp what having specials costs once: a mould, a change of mould, a least order
 */
public record SpecialOffer(Length length, Money unit, Money cut, Money special, Money setUp) {

    public SpecialOffer {
        Currency currency = unit.currency();
        for (Money price : List.of(unit, cut, special, setUp)) {
            require(price.currency().equals(currency),
                    "Special of %s: %s is not in %s like the price of the whole unit: convert it first.", length,
                    price, currency);
            require(price.amount().signum() >= 0, "Special of %s: the price %s is negative: correct it.", length,
                    price);
        }
    }
}
