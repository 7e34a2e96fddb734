package org.coursewright.core.cost;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import org.coursewright.takeoff.cost.Element;
import org.coursewright.takeoff.cost.ElementTable;

/** By what rows are put together. */
public enum QuantityGrouping {

    /** What is counted: one group for each item, with all that is said of it. */
    ITEM(QuantityRow::item),
    /** What the line says, or what the resource is for. */
    KIND(QuantityRow::kind),
    /** Element of the building, ASTM E1557. */
    ELEMENT(row -> row.element().map(QuantityGrouping::titled).orElse("Whole building"));

    private static final ElementTable ELEMENTS = ElementTable.uniformat2();

    private final Function<QuantityRow, String> title;

    QuantityGrouping(Function<QuantityRow, String> title) {
        this.title = title;
    }

    private static String titled(String code) {
        return code + ELEMENTS.find(code).map(Element::title).map(title -> " " + title).orElse("");
    }

    /**
     * @param rows in any order
     * @return groups in the order of their first rows, each with its rows in their order
     */
    public List<QuantityGroup> of(List<QuantityRow> rows) {
        Map<String, List<QuantityRow>> groups = new LinkedHashMap<>();
        rows.forEach(row -> groups.computeIfAbsent(title.apply(row), any -> new ArrayList<>()).add(row));
        return groups.entrySet().stream().map(group -> QuantityGroup.of(group.getKey(), group.getValue())).toList();
    }
}
