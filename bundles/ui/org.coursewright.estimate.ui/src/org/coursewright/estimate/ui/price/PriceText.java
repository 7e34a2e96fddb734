package org.coursewright.estimate.ui.price;

import org.eclipse.osgi.util.NLS;

/** What the price editor says. */
final class PriceText extends NLS {

    public static String accessibleBuildUp;
    public static String accessibleGroups;
    public static String accessibleLines;
    public static String accessibleRange;
    public static String accessibleSpecials;
    public static String accessibleSwings;
    public static String accessibleTornado;
    public static String blocksSaved;
    public static String buildUp;
    public static String byElement;
    public static String byTrade;
    public static String cheaper;
    public static String contingency;
    public static String cost;
    public static String cut;
    public static String cutting;
    public static String direct;
    public static String drivers;
    public static String element;
    public static String headline;
    public static String headlineRange;
    public static String haulage;
    public static String high;
    public static String incomplete;
    public static String labour;
    public static String length;
    public static String line;
    public static String lines;
    public static String low;
    public static String making;
    public static String mark;
    public static String material;
    public static String never;
    public static String noProblem;
    public static String noSpecials;
    public static String notYet;
    public static String nothingUncertain;
    public static String now;
    public static String ofTotal;
    public static String overhead;
    public static String paysFrom;
    public static String pieces;
    public static String plant;
    public static String quantity;
    public static String range;
    public static String rangeNote;
    public static String rate;
    public static String rateOf;
    public static String resource;
    public static String search;
    public static String searchHint;
    public static String shares;
    public static String sharesNote;
    public static String special;
    public static String specialNote;
    public static String specials;
    public static String swingLines;
    public static String swingSources;
    public static String tax;
    public static String total;
    public static String trade;
    public static String unit;
    public static String unitType;
    public static String unpriced;
    public static String variance;
    public static String work;

    static {
        NLS.initializeMessages(PriceText.class.getPackageName() + ".messages", PriceText.class);
    }

    private PriceText() {
    }
}
