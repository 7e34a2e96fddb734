package org.coursewright.exchange.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.coursewright.exchange.remark.Shown;
import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.NumberCell;

/**
 * One of several things in a cell, each a name and a number, such as {@code cement 1 | sand 4}.
 *
 * @param name what stands before the number
 * @param number above 0
 */
record Parts(String name, BigDecimal number) {

    static List<Parts> of(Cells cells, String column) {
        List<Parts> parts = new ArrayList<>();
        for (String part : split(cells.text(column))) {
            int blank = part.lastIndexOf(' ');
            Optional<BigDecimal> number = NumberCell.parsed(part.substring(blank + 1)).filter(each -> each
                    .signum() > 0);
            if (blank < 0 || number.isEmpty()) {
                cells.wrong(column, "%s cannot be used: enter a name and a number above 0, such as sand 4.".formatted(
                        Shown.quoted(part)));
            } else {
                parts.add(new Parts(part.substring(0, blank).strip(), number.get()));
            }
        }
        return parts;
    }

    /** @return the things in a cell, which a bar separates */
    static List<String> split(String text) {
        return Arrays.stream(text.split("\\|", -1)).map(String::strip).filter(part -> !part.isEmpty()).limit(200)
                .toList();
    }
}
