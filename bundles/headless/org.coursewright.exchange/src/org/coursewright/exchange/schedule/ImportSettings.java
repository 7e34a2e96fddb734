package org.coursewright.exchange.schedule;

import java.util.Objects;

import org.coursewright.measure.LengthFormat;

/**
 * What schedules do not say.
 *
 * @param name of the project
 * @param format what a bare number means, and how the project shows lengths
 * @param rule how walls are laid
 */
public record ImportSettings(String name, LengthFormat format, RuleChoice rule) {

    public ImportSettings {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(format, "format");
        Objects.requireNonNull(rule, "rule");
    }
}
