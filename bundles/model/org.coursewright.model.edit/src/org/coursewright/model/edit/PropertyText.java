package org.coursewright.model.edit;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Turns values of properties into text and back.
 *
 * @param format how lengths are written, and what a bare number means
 */
public record PropertyText(LengthFormat format) {

    private static final String SEPARATOR = "; ";

    private static final int LONGEST_PLAIN_NUMBER = 40;

    /**
     * @param value of a property, null for none
     * @return the value for reading; lengths are rounded as the project asks for
     */
    public String shown(Object value) {
        return text(value, format::format);
    }

    /**
     * @param value of a property, null for none
     * @return the value for editing: lengths are exact, and {@link #parse} gives the same value again
     */
    public String edited(Object value) {
        return text(value, format::formatExact);
    }

    private String text(Object value, Function<Length, String> lengths) {
        if (value instanceof Collection<?> values) {
            return values.stream().map(each -> text(each, lengths)).collect(Collectors.joining(SEPARATOR));
        }
        if (value instanceof Length length) {
            return lengths.apply(length);
        }
        if (value instanceof Enum<?> choice) {
            return ElementLabels.of(choice);
        }
        if (value instanceof EObject element) {
            return ElementLabels.of(element);
        }
        if (value instanceof Boolean yes) {
            return EditTexts.of(yes ? "value.yes" : "value.no");
        }
        return value instanceof BigDecimal number ? plain(number) : value == null ? "" : value.toString();
    }

    private static String plain(BigDecimal number) {
        String plainest = number.precision() + Math.abs((long) number.scale()) > LONGEST_PLAIN_NUMBER
                ? number.toString()
                : number.toPlainString();
        return plainest;
    }

    /**
     * Reads what somebody typed.
     *
     * @param property that it was typed for
     * @param owner of the property, in a project
     * @param typed the text; blank for no value
     * @return the value, null for none, a list for a property of many values
     * @throws IllegalArgumentException if it cannot be read; the message says why and what would be right
     */
    public Object parse(PropertyDescriptor property, EObject owner, String typed) {
        String text = typed.strip();
        if (text.isEmpty() && !property.feature().isMany()) {
            return property.feature().getDefaultValue();
        }
        try {
            return parseGiven(property, owner, text);
        } catch (DateTimeException | NumberFormatException e) {
            throw unreadable(property, text, e);
        }
    }

    private Object parseGiven(PropertyDescriptor property, EObject owner, String text) {
        return switch (property.kind()) {
            case TEXT, LONG_TEXT -> text;
            case LENGTH -> format.parse(text);
            case LENGTHS -> split(text, format::parse);
            case WHOLE_NUMBER -> Integer.valueOf(text);
            case NUMBER -> new BigDecimal(text);
            case YES_NO -> parseYesNo(property, text);
            case CHOICE -> parseChoice(property, text);
            case DATE -> LocalDate.parse(text);
            case DATES -> split(text, LocalDate::parse);
            case TIME -> LocalTime.parse(text);
            case MOMENT -> Instant.parse(text);
            case MONEY -> Money.fromStored(text);
            case QUANTITY -> Quantity.fromStored(text);
            case ELEMENT -> parseElement(property, owner, text);
            case ELEMENTS -> throw unreadable(property, text, null);
        };
    }

    private static <T> List<T> split(String text, Function<String, T> each) {
        List<T> values = new ArrayList<>();
        for (String part : text.split(";")) {
            if (!part.isBlank()) {
                values.add(each.apply(part.strip()));
            }
        }
        return values;
    }

    private static Boolean parseYesNo(PropertyDescriptor property, String text) {
        if (text.equalsIgnoreCase(EditTexts.of("value.yes"))) {
            return Boolean.TRUE;
        }
        if (text.equalsIgnoreCase(EditTexts.of("value.no"))) {
            return Boolean.FALSE;
        }
        throw unreadable(property, text, null);
    }

    private static Enum<?> parseChoice(PropertyDescriptor property, String text) {
        return choices(property).stream().filter(
                each -> text.equalsIgnoreCase(ElementLabels.of(each)) || text.equalsIgnoreCase(each.toString()))
                .findFirst().orElseThrow(() -> unreadable(property, text, null));
    }

    /**
     * What a property can be chosen from.
     *
     * @param property of kind {@link ValueKind#CHOICE}
     * @return all choices, in the order of their declaration
     */
    public static List<Enum<?>> choices(PropertyDescriptor property) {
        return Stream.of(property.feature().getEType().getInstanceClass().getEnumConstants())
                .<Enum<?>>map(each -> (Enum<?>) each).toList();
    }

    private static EObject parseElement(PropertyDescriptor property, EObject owner, String text) {
        return candidates(property, owner).stream().filter(each -> text.equals(ElementLabels.of(each))).findFirst()
                .orElseThrow(() -> unreadable(property, text, null));
    }

    /**
     * What a property that refers to another element can refer to.
     *
     * @param property of kind {@link ValueKind#ELEMENT}
     * @param owner of the property, in a project
     * @return all elements of the right class, in the order of the project
     */
    public static List<EObject> candidates(PropertyDescriptor property, EObject owner) {
        List<EObject> found = new ArrayList<>();
        EClass wanted = (EClass) property.feature().getEType();
        for (Iterator<EObject> all = EcoreUtil.getRootContainer(owner).eAllContents(); all.hasNext();) {
            EObject each = all.next();
            if (wanted.isInstance(each)) {
                found.add(each);
            }
        }
        return found;
    }

    private static IllegalArgumentException unreadable(PropertyDescriptor property, String text, Throwable cause) {
        String listed = property.kind() != ValueKind.CHOICE
                ? ""
                : choices(property).stream().map(ElementLabels::of).collect(Collectors.joining(", "));
        return new IllegalArgumentException(
                EditTexts.of("refusal.unreadable." + property.kind(), property.label(), text, listed), cause);
    }
}
