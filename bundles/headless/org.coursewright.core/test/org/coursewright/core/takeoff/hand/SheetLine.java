package org.coursewright.core.takeoff.hand;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of the sheet.
 *
 * @param item what is taken off
 * @param formula its stable name
 * @param working how it was reckoned
 * @param result of the working
 * @param unit UN/ECE Recommendation 20 code
 */
record SheetLine(String item, String formula, String working, BigDecimal result, String unit) {

    static final String HEADER = "line,item,formula,working,result,unit";

    private static final Pattern ROW = Pattern.compile(
            "\\d+,\"((?:[^\"]|\"\")*)\",([^,\"]*),\"([^\"]*)\",([^,]*),([^,]*)");

    static SheetLine parse(String row) {
        Matcher cells = ROW.matcher(row);
        if (!cells.matches()) {
            throw new IllegalArgumentException("No line of the sheet: " + row);
        }
        return new SheetLine(cells.group(1).replace("\"\"", "\""), cells.group(2), cells.group(3), new BigDecimal(cells
                .group(4)), cells.group(5));
    }

    String row(int number, BigDecimal reckoned) {
        return "%d,\"%s\",%s,\"%s\",%s,%s".formatted(number, item.replace("\"", "\"\""), formula, working, reckoned
                .stripTrailingZeros().toPlainString(), unit);
    }
}
