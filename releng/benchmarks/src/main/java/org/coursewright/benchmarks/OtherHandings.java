package org.coursewright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.benchmarks.oracle.GeneralModel;
import org.coursewright.benchmarks.oracle.Handing;
import org.coursewright.benchmarks.oracle.ModelAnswer;
import org.coursewright.benchmarks.oracle.Score;
import org.coursewright.bond.BondRequest;

/**
 * What a reference solver finds for a building with its corners and tees handed otherwise than the engine hands them. The
 * engine weighs all handings; the solver has to lay the walls for each to know which is best.
 *
 * @param best the least score of all handings, the chosen one among them, or empty if not every one could be proven
 * @param seconds processor time taken for the others (s)
 */
record OtherHandings(Optional<Score> best, double seconds) {

    /** Where no other handing is tried. */
    static final OtherHandings UNTRIED = new OtherHandings(Optional.empty(), 0);

    /**
     * Lays the building for every other handing, as long as all before could be proven.
     *
     * @param asChosen what the solver found for the handing that the engine chose
     * @param limit most time on a wall (s)
     */
    static OtherHandings of(BondRequest request, Handing chosen, List<WallComparison> asChosen, double limit) {
        Optional<Score> best = total(asChosen.stream().map(WallComparison::reference).toList());
        double seconds = 0;
        List<Handing> others = new ArrayList<>(Handing.all(request.meetings()));
        others.remove(chosen);
        for (Handing other : others) {
            if (best.isPresent()) {
                List<ModelAnswer> answers = request.walls().stream()
                        .map(wall -> GeneralModel.lay(wall, other, limit)).toList();
                seconds += answers.stream().mapToDouble(ModelAnswer::seconds).sum();
                Score known = best.get();
                best = total(answers).map(found -> found.compareTo(known) < 0 ? found : known);
            }
        }
        return new OtherHandings(best, seconds);
    }

    private static Optional<Score> total(List<ModelAnswer> answers) {
        if (!answers.stream().allMatch(ModelAnswer::proven)) {
            return Optional.empty();
        }
        return answers.stream().map(answer -> answer.score().orElseThrow()).reduce(Score::plus);
    }
}
