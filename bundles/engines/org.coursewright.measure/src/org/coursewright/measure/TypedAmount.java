package org.coursewright.measure;

import java.math.BigDecimal;

/**
 * A number as it was typed.
 *
 * @param value its exact value, at least 0
 * @param fraction whether it was typed with a fraction such as 1/2
 */
record TypedAmount(BigDecimal value, boolean fraction) {

    boolean isWhole() {
        return value.stripTrailingZeros().scale() <= 0;
    }
}
