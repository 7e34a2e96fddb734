package org.coursewright.model.edit;

import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;

import org.coursewright.measure.Length;

/** What a single value must be, whatever the rest of the project is. */
enum ValueRule {
    /** Anything of its type. */
    ANY(value -> true),
    /** Text that a file can hold. */
    TEXT(value -> isPlain((String) value)),
    /** Text that says something. */
    GIVEN_TEXT(value -> value != null && !((String) value).isBlank() && isPlain((String) value)),
    /** A length greater than nothing, or not given. */
    POSITIVE_OR_UNSET(value -> value == null || ((Length) value).signum() > 0),
    /** A length greater than nothing. */
    POSITIVE(value -> value != null && ((Length) value).signum() > 0),
    /** A length of nothing or more, or not given. */
    NOT_NEGATIVE_OR_UNSET(value -> value == null || ((Length) value).signum() >= 0),
    /** A length of nothing or more. */
    NOT_NEGATIVE(value -> value != null && ((Length) value).signum() >= 0),
    /** A length, also before or below the origin. */
    POSITION(value -> value != null),
    /** Lengths greater than nothing, each once. */
    POSITIVE_LENGTHS(ValueRule::areDistinctPositive),
    /** A number greater than 0, or not given. */
    POSITIVE_NUMBER(value -> value == null || ((BigDecimal) value).signum() > 0),
    /** A share from 0 to 1, or not given. */
    SHARE(value -> isBetween(value, 0, 1)),
    /** Degrees north. */
    LATITUDE(value -> isBetween(value, -90, 90)),
    /** Degrees east. */
    LONGITUDE(value -> isBetween(value, -180, 180)),
    /** A whole number from 0. */
    COUNT(value -> value != null && (Integer) value >= 0),
    /** A whole number from 1. */
    ORDINAL(value -> value != null && (Integer) value >= 1),
    /** 8 or 16. */
    INCH_DENOMINATOR(value -> List.of(8, 16).contains(value)),
    /** ISO 4217. */
    CURRENCY(value -> value == null || currencies().contains(value)),
    /** BCP 47, or empty. */
    LOCALE(value -> value == null || isLocale((String) value)),
    /** IANA. */
    TIME_ZONE(value -> value == null || isTimeZone((String) value));

    private final Predicate<Object> accepts;

    ValueRule(Predicate<Object> accepts) {
        this.accepts = accepts;
    }

    /** @return whether a value of the feature's type, or null for none, is allowed */
    boolean accepts(Object value) {
        return accepts.test(value);
    }

    /** XML 1.0 cannot hold most control characters, nor half a surrogate pair. */
    private static boolean isPlain(String text) {
        return text == null || text.codePoints().allMatch(c -> c == '\n' || c == '\t'
                || c >= ' ' && !Character.isISOControl(c) && Character.getType(c) != Character.SURROGATE
                        && c != 0xFFFE && c != 0xFFFF);
    }

    private static boolean areDistinctPositive(Object value) {
        Collection<?> lengths = (Collection<?>) value;
        return lengths.stream().allMatch(each -> each instanceof Length length && length.signum() > 0)
                && lengths.stream().distinct().count() == lengths.size();
    }

    private static boolean isBetween(Object value, int least, int most) {
        return value == null || value instanceof BigDecimal number && number.compareTo(BigDecimal.valueOf(least)) >= 0
                && number.compareTo(BigDecimal.valueOf(most)) <= 0;
    }

    private static Collection<String> currencies() {
        return Currency.getAvailableCurrencies().stream().map(Currency::getCurrencyCode).collect(Collectors.toSet());
    }

    private static boolean isLocale(String tag) {
        return tag.isEmpty() || Locale.forLanguageTag(tag).toLanguageTag().equalsIgnoreCase(tag);
    }

    private static boolean isTimeZone(String name) {
        return ZoneId.getAvailableZoneIds().contains(name);
    }
}
