package org.coursewright.estimate.ui.mix;

import org.eclipse.osgi.util.NLS;

/** What the mix designer says. */
final class MixText extends NLS {

    public static String accessibleBatch;
    public static String accessibleMixes;
    public static String accessibleParts;
    public static String batch;
    public static String batchOf;
    public static String block;
    public static String blockOf;
    public static String blockStabiliser;
    public static String blockWater;
    public static String blocksFromPack;
    public static String byMass;
    public static String byVolume;
    public static String container;
    public static String deviation;
    public static String exact;
    public static String grain;
    public static String grainFits;
    public static String grainTooLarge;
    public static String headline;
    public static String headlineNone;
    public static String leastWater;
    public static String loose;
    public static String mass;
    public static String material;
    public static String mix;
    public static String mostWater;
    public static String noBatch;
    public static String noGrain;
    public static String notUsed;
    public static String notYet;
    public static String partsTyped;
    public static String perCubicMetre;
    public static String rounded;
    public static String stabiliser;
    public static String toAdd;
    public static String tooWet;
    public static String typeHint;
    public static String usedFor;
    public static String water;
    public static String waterShares;

    static {
        NLS.initializeMessages(MixText.class.getPackageName() + ".messages", MixText.class);
    }

    private MixText() {
    }
}
