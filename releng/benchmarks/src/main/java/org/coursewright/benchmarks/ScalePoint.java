package org.coursewright.benchmarks;

import java.util.List;

import org.coursewright.benchmarks.oracle.Handing;
import org.coursewright.benchmarks.oracle.LayoutVerifier;
import org.coursewright.benchmarks.oracle.Score;
import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.WallLayout;

/**
 * One building laid and measured.
 *
 * @param walls how many walls
 * @param units pieces laid
 * @param seconds processor time (s)
 * @param megabytes heap in use when it is fullest, what the program itself holds left out (MB)
 * @param proven walls called optimal
 * @param score of the building, recomputed
 * @param faults what the verifier finds wrong
 */
record ScalePoint(int walls, int units, double seconds, double megabytes, int proven, Score score, int faults) {

    static ScalePoint measure(BondRequest request) {
        Engine.Timed timed;
        double megabytes;
        try (HeapWatch heap = HeapWatch.start()) {
            timed = Engine.timed(request, 1);
            megabytes = heap.most();
        }
        BondResult result = timed.result();
        List<WallLayout> laid = result.walls();
        int units = laid.stream().flatMap(wall -> wall.courses().stream()).flatMap(course -> course.runs().stream())
                .mapToInt(run -> run.pieces().size()).sum();
        Handing handing = Handing.of(request.meetings(), result.throughOnOdd());
        Score score = Score.NONE;
        for (int index = 0; index < laid.size(); index++) {
            score = score.plus(Score.of(request.walls().get(index), handing, laid.get(index)));
        }
        return new ScalePoint(laid.size(), units, timed.seconds(), megabytes,
                (int) laid.stream().filter(WallLayout::optimal).count(), score,
                LayoutVerifier.faults(request, result).size());
    }
}
