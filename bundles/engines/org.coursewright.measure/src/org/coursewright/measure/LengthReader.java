package org.coursewright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

import org.coursewright.measure.LengthToken.Kind;

/** Makes a length of the pieces of a typed one. Reads one text once. */
final class LengthReader {

    /** Ten kilometres: beyond that a zero too many was typed. */
    private static final BigDecimal LONGEST = BigDecimal.valueOf(10_000_000 * Length.UNITS_PER_MILLIMETRE);

    private static final BigDecimal INCHES_PER_FOOT = BigDecimal.valueOf(12);

    private final String typed;
    private final TypedUnit bare;
    private final List<LengthToken> tokens;
    private int at;

    LengthReader(String typed, DisplayUnit display) {
        this.typed = typed;
        this.bare = TypedUnit.of(display);
        this.tokens = new LengthScanner(typed).tokens();
    }

    Length read() {
        boolean negative = takeSign();
        TypedAmount first = amount();
        Optional<TypedUnit> unit = takeUnit();
        BigDecimal units = in(first, unit);
        if (unit.equals(Optional.of(TypedUnit.FOOT)) && at < tokens.size()) {
            units = units.add(inchesAfter(first));
        }
        requireEnd();
        return length(negative ? units.negate() : units);
    }

    private boolean takeSign() {
        boolean minus = next(Kind.DASH);
        if (minus || next(Kind.PLUS)) {
            at++;
        }
        return minus;
    }

    private TypedAmount amount() {
        if (next(Kind.FRACTION)) {
            return new TypedAmount(fraction().value(), true);
        }
        if (!next(Kind.NUMBER)) {
            throw refuse(at < tokens.size()
                    ? "a number is expected in the place of \"%s\", such as 4 1/2 in or 3760 mm"
                            .formatted(here().text())
                    : "a number is missing at its end");
        }
        BigDecimal whole = new BigDecimal(tokens.get(at++).text());
        if (dashBeforeFraction()) {
            at++;
        }
        return next(Kind.FRACTION) ? mixed(whole) : new TypedAmount(whole, false);
    }

    private boolean dashBeforeFraction() {
        if (!next(Kind.DASH) || at + 1 >= tokens.size() || !tokens.get(at + 1).is(Kind.FRACTION)) {
            return false;
        }
        if (!here().tight() || !tokens.get(at + 1).tight()) {
            throw refuse("it could be a subtraction; write a whole number and a fraction as 4 1/2 or 4-1/2");
        }
        return true;
    }

    private TypedAmount mixed(BigDecimal whole) {
        BigDecimal part = fraction().value();
        if (whole.scale() > 0) {
            throw refuse("a number has decimals or a fraction, not both; write 4.5 or 4 1/2");
        }
        if (part.compareTo(BigDecimal.ONE) >= 0) {
            throw refuse("a fraction after a whole number is less than 1, such as 4 1/2");
        }
        return new TypedAmount(whole.add(part), true);
    }

    private InchFraction fraction() {
        InchFraction fraction = InchFraction.of(tokens.get(at++).text());
        if (!fraction.isOnRule()) {
            throw refuse(fraction.complaint());
        }
        return fraction;
    }

    private Optional<TypedUnit> takeUnit() {
        if (!next(Kind.UNIT)) {
            return Optional.empty();
        }
        String spelling = tokens.get(at++).text();
        return Optional.of(TypedUnit.find(spelling).orElseThrow(() -> refuse(
                "\"%s\" is not a unit of length; write mm, cm, m, in, ft, ' or \"".formatted(spelling))));
    }

    private BigDecimal inchesAfter(TypedAmount feet) {
        if (!feet.isWhole() || feet.fraction()) {
            throw refuse("feet before inches are a whole number, such as 12'-4 1/2\"");
        }
        if (next(Kind.DASH)) {
            at++;
        }
        TypedAmount inches = amount();
        if (takeUnit().orElse(TypedUnit.INCH) != TypedUnit.INCH) {
            throw refuse("only inches follow feet, such as 12'-4 1/2\"");
        }
        if (inches.value().compareTo(INCHES_PER_FOOT) >= 0) {
            Length sum = length(in(feet, Optional.of(TypedUnit.FOOT)).add(in(inches, Optional.of(TypedUnit.INCH))));
            throw refuse("inches after feet are less than 12; write " + LengthFormat.INCHES.formatExact(sum));
        }
        return in(inches, Optional.of(TypedUnit.INCH));
    }

    private BigDecimal in(TypedAmount amount, Optional<TypedUnit> typedUnit) {
        TypedUnit unit = typedUnit.orElse(bare);
        if (amount.fraction() && !unit.takesFractions()) {
            throw refuse(typedUnit.isPresent()
                    ? "a metric length has decimals and no fraction, such as 4.5 mm"
                    : "a fraction without a unit could be inches; write 4 1/2 in, or 4.5 for millimetres");
        }
        return amount.value().multiply(BigDecimal.valueOf(unit.units()));
    }

    private void requireEnd() {
        if (at == tokens.size()) {
            return;
        }
        throw refuse(switch (here().kind()) {
            case NUMBER, FRACTION -> "two numbers follow each other; write one number with one unit, such as 3760 mm,"
                    + " or feet and inches, such as 12'-4 1/2\"";
            case UNIT -> "\"%s\" is a unit too many; write one unit, or feet and inches, such as 12'-4 1/2\""
                    .formatted(here().text());
            case DASH, PLUS -> ("\"%s\" cannot stand there; write feet and inches as 12'-4 1/2\","
                    + " a whole number and a fraction as 4 1/2").formatted(here().text());
        });
    }

    private Length length(BigDecimal units) {
        if (units.abs().compareTo(LONGEST) > 0) {
            throw refuse("it is more than 10 km, too long for a building");
        }
        return Length.ofUnits(units.setScale(0, RoundingMode.HALF_UP).longValueExact());
    }

    private boolean next(Kind kind) {
        return at < tokens.size() && here().is(kind);
    }

    private LengthToken here() {
        return tokens.get(at);
    }

    private LengthFormatException refuse(String reason) {
        return new LengthFormatException(typed, reason);
    }
}
