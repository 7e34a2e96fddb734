package org.coursewright.model.edit;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What kind of value a property has, and so how it is shown and typed. */
public enum ValueKind {
    /** Text on one line. */
    TEXT,
    /** Text of several lines. */
    LONG_TEXT,
    /** A length in the units of the project. */
    LENGTH,
    /** Lengths, separated by semicolons. */
    LENGTHS,
    /** A whole number. */
    WHOLE_NUMBER,
    /** A decimal number. */
    NUMBER,
    /** Yes or no. */
    YES_NO,
    /** One of the literals of an enumeration. */
    CHOICE,
    /** A calendar date, ISO 8601. */
    DATE,
    /** Dates, separated by semicolons. */
    DATES,
    /** A time of day, ISO 8601. */
    TIME,
    /** A point in time, ISO 8601 in UTC. */
    MOMENT,
    /** An amount and its ISO 4217 code. */
    MONEY,
    /** A number and its UN/ECE Recommendation 20 code. */
    QUANTITY,
    /** Another element of the project. */
    ELEMENT,
    /** Other elements of the project. */
    ELEMENTS;

    static ValueKind of(EStructuralFeature feature) {
        if (!(feature instanceof EAttribute)) {
            return feature.isMany() ? ELEMENTS : ELEMENT;
        }
        return feature.getEType().getInstanceClass().isEnum() ? CHOICE : ofAttribute(feature);
    }

    private static ValueKind ofAttribute(EStructuralFeature feature) {
        return switch (feature.getEType().getName()) {
            case "Length" -> feature.isMany() ? LENGTHS : LENGTH;
            case "Date" -> feature.isMany() ? DATES : DATE;
            case "EString" -> feature.getName().equals("note") ? LONG_TEXT : TEXT;
            case "EInt" -> WHOLE_NUMBER;
            case "EBigDecimal" -> NUMBER;
            case "EBoolean" -> YES_NO;
            case "Time" -> TIME;
            case "Moment" -> MOMENT;
            case "Money" -> MONEY;
            case "Quantity" -> QUANTITY;
            default -> throw new IllegalStateException("No kind of value for " + feature);
        };
    }
}
