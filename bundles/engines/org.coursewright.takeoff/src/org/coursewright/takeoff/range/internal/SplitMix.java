package org.coursewright.takeoff.range.internal;

/**
 * Random bits: the generator SplitMix64 (G. L. Steele, D. Lea and C. H. Flood, "Fast splittable pseudorandom number
 * generators", OOPSLA 2014). Written out here so that no change of the Java library changes a published range.
 */
final class SplitMix {

    private static final long GOLDEN_GAMMA = 0x9e3779b97f4a7c15L;
    private static final double UNIT = 0x1.0p-53;

    private long state;

    SplitMix(long seed) {
        state = seed;
    }

    /** @return one of many streams of a seed */
    static SplitMix stream(long seed, long number) {
        return new SplitMix(mixed(seed ^ mixed(number + GOLDEN_GAMMA)));
    }

    long next() {
        state += GOLDEN_GAMMA;
        return mixed(state);
    }

    /** @return a number from 0 to less than 1, of 53 random bits */
    double nextShare() {
        return (next() >>> 11) * UNIT;
    }

    private static long mixed(long bits) {
        long mixed = (bits ^ (bits >>> 30)) * 0xbf58476d1ce4e5b9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94d049bb133111ebL;
        return mixed ^ (mixed >>> 31);
    }
}
