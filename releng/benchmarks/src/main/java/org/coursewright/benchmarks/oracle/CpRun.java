package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.List;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;

/** The constraint model of one run: one filling for each number of pieces it may have, of which one is chosen. */
final class CpRun {

    private final Stretch stretch;
    private final CpScale scale;
    private final List<CpFilling> fillings = new ArrayList<>();

    CpRun(CpModel model, CpScale scale, Stretch stretch, List<Integer> counts) {
        this.stretch = stretch;
        this.scale = scale;
        counts.forEach(pieces -> fillings.add(new CpFilling(model, scale, stretch, pieces)));
        model.addExactlyOne(fillings.stream().map(CpFilling::chosen).toArray(BoolVar[]::new));
    }

    Stretch stretch() {
        return stretch;
    }

    List<CpFilling> fillings() {
        return fillings;
    }

    int mostPieces() {
        return fillings.stream().mapToInt(CpFilling::pieceCount).max().orElse(0);
    }

    List<BoolVar> cuts() {
        return fillings.stream().flatMap(filling -> filling.cuts().stream()).toList();
    }

    void hint(CpModel model, List<Long> pieces) {
        for (CpFilling filling : fillings) {
            boolean chosen = filling.pieceCount() == pieces.size();
            model.addHint(filling.chosen(), chosen);
            if (chosen) {
                filling.hint(model, pieces.stream().map(scale::inGrid).toList());
            }
        }
    }

    LaidStretch laid(CpSolver solver) {
        CpFilling chosen = fillings.stream().filter(filling -> solver.booleanValue(filling.chosen())).findFirst()
                .orElseThrow();
        return new LaidStretch(stretch,
                chosen.lengths(solver).stream().map(length -> length * scale.grid()).toList());
    }
}
