package org.coursewright.core.takeoff;

import java.util.Map;

/** What a line is called, by its formula. */
public final class LineTitle {

    private static final Map<String, String> TITLES = Map.ofEntries(
            Map.entry("units.whole", "laid whole"),
            Map.entry("units.specials", "specials to order"),
            Map.entry("units.cutting", "cut up for cut pieces"),
            Map.entry("units.low", "cut low along the bed"),
            Map.entry("units.ordered", "whole to order"),
            Map.entry("mortar.bed", "mortar in bed joints"),
            Map.entry("mortar.head", "mortar in head joints"),
            Map.entry("mortar.besideCuts", "mortar in head joints beside cut pieces"),
            Map.entry("mortar.net", "net"),
            Map.entry("mortar.ordered", "with waste"),
            Map.entry("lintels.count", "how many"),
            Map.entry("lintels.length", "total length"),
            Map.entry("face.net", "less openings"));

    private LineTitle() {
    }

    /**
     * @param formula its stable name
     * @return a title, or the formula's own name
     */
    public static String of(String formula) {
        return TITLES.getOrDefault(formula, formula);
    }
}
