package org.coursewright.measure;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The units of measure that we use, with their common codes of UN/ECE Recommendation 20 (codes and withdrawals as in the
 * unit code list published with OASIS UBL 2.1; symbols are those in use in the trade).
 */
public enum UnitCode {

    METRE("MTR", "m", "metre"), CENTIMETRE("CMT", "cm", "centimetre"), MILLIMETRE("MMT", "mm", "millimetre"), INCH(
            "INH", "in", "inch"), FOOT("FOT", "ft", "foot"), YARD("YRD", "yd", "yard"), LINEAR_FOOT("LF", "lin ft",
                    "linear foot"), LINEAR_METRE("LM", "lin m", "linear metre"), SQUARE_METRE("MTK", "m\u00b2",
                            "square metre"), SQUARE_FOOT("FTK", "ft\u00b2", "square foot"), SQUARE_YARD("YDK",
                                    "yd\u00b2",
                                    "square yard"), CUBIC_METRE("MTQ", "m\u00b3", "cubic metre"), CUBIC_DECIMETRE("DMQ",
                                            "dm\u00b3",
                                            "cubic decimetre"), CUBIC_FOOT("FTQ", "ft\u00b3", "cubic foot"), CUBIC_YARD(
                                                    "YDQ", "yd\u00b3",
                                                    "cubic yard"), LITRE("LTR", "L", "litre"), US_GALLON("GLL", "gal",
                                                            "US gallon"), KILOGRAM("KGM", "kg", "kilogram"), TONNE(
                                                                    "TNE", "t",
                                                                    "tonne"), POUND("LBR", "lb", "pound"), US_TON("STN",
                                                                            "ton", "US ton of 2000 lb"), PIECE("H87",
                                                                                    "pc", "piece"), ONE("C62", "1",
                                                                                            "one"), EACH("EA", "ea",
                                                                                                    "each"), THOUSAND(
                                                                                                            "MIL",
                                                                                                            "thousand",
                                                                                                            "thousand"), HUNDRED(
                                                                                                                    "CEN",
                                                                                                                    "hundred",
                                                                                                                    "hundred"), SET(
                                                                                                                            "SET",
                                                                                                                            "set",
                                                                                                                            "set"), HOUR(
                                                                                                                                    "HUR",
                                                                                                                                    "h",
                                                                                                                                    "hour"), MINUTE(
                                                                                                                                            "MIN",
                                                                                                                                            "min",
                                                                                                                                            "minute"), DAY(
                                                                                                                                                    "DAY",
                                                                                                                                                    "d",
                                                                                                                                                    "day"), WEEK(
                                                                                                                                                            "WEE",
                                                                                                                                                            "wk",
                                                                                                                                                            "week"), MONTH(
                                                                                                                                                                    "MON",
                                                                                                                                                                    "mo",
                                                                                                                                                                    "month"), KILOGRAM_PER_CUBIC_METRE(
                                                                                                                                                                            "KMQ",
                                                                                                                                                                            "kg/m\u00b3",
                                                                                                                                                                            "kilogram per cubic metre"), POUND_PER_CUBIC_FOOT(
                                                                                                                                                                                    "87",
                                                                                                                                                                                    "lb/ft\u00b3",
                                                                                                                                                                                    "pound per cubic foot"), MEGAPASCAL(
                                                                                                                                                                                            "MPA",
                                                                                                                                                                                            "MPa",
                                                                                                                                                                                            "megapascal"), DEGREE_CELSIUS(
                                                                                                                                                                                                    "CEL",
                                                                                                                                                                                                    "\u00b0C",
                                                                                                                                                                                                    "degree Celsius"), DEGREE_FAHRENHEIT(
                                                                                                                                                                                                            "FAH",
                                                                                                                                                                                                            "\u00b0F",
                                                                                                                                                                                                            "degree Fahrenheit"), PERCENT(
                                                                                                                                                                                                                    "P1",
                                                                                                                                                                                                                    "%",
                                                                                                                                                                                                                    "percent"), LUMP_SUM(
                                                                                                                                                                                                                            "LS",
                                                                                                                                                                                                                            "LS",
                                                                                                                                                                                                                            "lump sum"), KILOWATT_HOUR(
                                                                                                                                                                                                                                    "KWH",
                                                                                                                                                                                                                                    "kWh",
                                                                                                                                                                                                                                    "kilowatt hour"),
    /** Withdrawn: read it, write {@link #PIECE} or {@link #ONE} with the pack size. */
    BAG("BG", "bag", "bag", true),
    /** Withdrawn: read it, write {@link #PIECE} or {@link #ONE} with the pack size. */
    BOX("BX", "box", "box", true),
    /** Withdrawn: read it, write {@link #PIECE} or {@link #ONE} with the pack size. */
    ROLL("RO", "roll", "roll", true),
    /** Withdrawn: read it, write {@link #PIECE} or {@link #ONE} with the pack size. */
    PALLET("PF", "pallet", "pallet", true);

    private static final Map<String, UnitCode> BY_CODE = Arrays.stream(values())
            .collect(Collectors.toUnmodifiableMap(UnitCode::code, Function.identity()));

    private final String code;
    private final String symbol;
    private final String title;
    private final boolean withdrawn;

    UnitCode(String code, String symbol, String title) {
        this(code, symbol, title, false);
    }

    UnitCode(String code, String symbol, String title, boolean withdrawn) {
        this.code = code;
        this.symbol = symbol;
        this.title = title;
        this.withdrawn = withdrawn;
    }

    /**
     * @param code a common code, in capitals, not null
     * @return the unit with that code, or empty if we use none
     */
    public static Optional<UnitCode> find(String code) {
        return Optional.ofNullable(BY_CODE.get(code));
    }

    /**
     * @param code a common code, in capitals, not null
     * @return the unit with that code
     * @throws IllegalArgumentException if we use none
     */
    public static UnitCode of(String code) {
        return find(code).orElseThrow(() -> new IllegalArgumentException(
                "\"%s\" is not a UN/ECE Recommendation 20 code that is used here; write such as MTQ, KGM, H87 or HUR."
                        .formatted(StoredDecimal.shown(code))));
    }

    /** @return the common code, such as {@code MTQ} */
    public String code() {
        return code;
    }

    /** @return what stands after a number, such as {@code m³} */
    public String symbol() {
        return symbol;
    }

    /** @return the name in the singular, such as {@code cubic metre} */
    public String title() {
        return title;
    }

    /** @return whether the code is withdrawn: to be understood when it is received, never to be sent */
    public boolean isWithdrawn() {
        return withdrawn;
    }
}
