package org.coursewright.takeoff.quantities;

import org.coursewright.takeoff.Formula;

/** The formulas of this package. */
final class TakeoffFormulas {

    private static final String GEOMETRY = "geometry";
    private static final String PRACTICE = "common practice, no source";

    static final Formula BED = new Formula("mortar.bed", "length × bedJoint × thickness × bedFill", GEOMETRY);
    static final Formula HEAD = new Formula("mortar.head",
            "jointTotal × (joints − besideCuts) ÷ joints × height × thickness × headFill", GEOMETRY);
    static final Formula BESIDE_CUTS = new Formula("mortar.besideCuts",
            "jointTotal × besideCuts ÷ joints × height × thickness × headFill", GEOMETRY);
    static final Formula MORTAR_NET = new Formula("mortar.net", "bed + head + besideCuts", GEOMETRY);
    static final Formula MORTAR_ORDERED = new Formula("mortar.ordered", "net × (1 + waste)", PRACTICE);
    static final Formula WHOLE = new Formula("units.whole", "pieces counted", GEOMETRY);
    static final Formula SPECIALS = new Formula("units.specials", "⌈pieces × (1 + breakage)⌉", PRACTICE);
    static final Formula CUTTING = new Formula("units.cutting", "fewest units of this length that hold all cut pieces",
            "Gilmore and Gomory, Operations Research 9 (1961)");
    static final Formula LOW = new Formula("units.low", "pieces in courses lower than the unit", GEOMETRY);
    static final Formula ORDERED = new Formula("units.ordered", "⌈(whole + cutting) × (1 + breakage)⌉", PRACTICE);

    private TakeoffFormulas() {
    }
}
