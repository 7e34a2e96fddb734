package org.coursewright.benchmarks.oracle;

/**
 * A head joint at an exact place along its wall: from {@code start/parts} to {@code end/parts}.
 *
 * @param start numerator of its near edge (1/320 mm)
 * @param end numerator of its far edge (1/320 mm)
 * @param parts denominator of both, at least 1
 */
record HeadJoint(long start, long end, long parts) {

    /** @return whether this joint and {@code other} lap less than {@code leastLap}; touching that is lap enough */
    boolean lapsShort(HeadJoint other, long leastLap) {
        long least = Math.multiplyExact(leastLap, Math.multiplyExact(parts, other.parts));
        long after = Math.subtractExact(Math.multiplyExact(other.start, parts), Math.multiplyExact(end, other.parts));
        long before = Math.subtractExact(Math.multiplyExact(start, other.parts),
                Math.multiplyExact(other.end, parts));
        return Math.max(after, before) < least;
    }
}
