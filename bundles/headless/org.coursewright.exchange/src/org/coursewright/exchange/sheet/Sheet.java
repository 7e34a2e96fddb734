package org.coursewright.exchange.sheet;

import java.util.List;
import java.util.Objects;

import org.coursewright.exchange.sheet.page.SheetPage;

/**
 * The sheet of one wall.
 *
 * @param mark the wall's mark
 * @param scale of elevation and plan, the number after {@code 1:}
 * @param pages the first with the drawings, further ones with tables that found no room
 */
public record Sheet(String mark, int scale, List<SheetPage> pages) {

    public Sheet {
        Objects.requireNonNull(mark, "mark");
        pages = List.copyOf(pages);
    }
}
