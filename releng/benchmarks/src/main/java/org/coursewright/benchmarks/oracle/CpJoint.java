package org.coursewright.benchmarks.oracle;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.IntVar;

/**
 * A joint of a filling. Places are the grid divided by {@code parts}.
 *
 * @param chosen whether the filling is
 * @param start where the joint begins
 * @param earliest least value of {@code start}
 * @param latest greatest value of {@code start}
 * @param width its width
 * @param widest greatest value of {@code width}
 * @param parts joints of the filling
 */
record CpJoint(BoolVar chosen, IntVar start, long earliest, long latest, IntVar width, long widest, long parts) {

    /** @return whether this joint always ends at least {@code lap} before {@code other} begins */
    boolean alwaysBefore(CpJoint other, long lap) {
        return other.earliest * parts - (latest + widest) * other.parts >= lap * parts * other.parts;
    }

    /** @return whether this joint can end {@code lap} before {@code other} begins */
    boolean canBeBefore(CpJoint other, long lap) {
        return other.latest * parts - earliest * other.parts >= lap * parts * other.parts;
    }
}
