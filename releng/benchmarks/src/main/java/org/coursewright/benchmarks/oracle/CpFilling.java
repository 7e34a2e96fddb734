package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.List;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;

/**
 * A run filled with a certain number of pieces. Its joints are equal, so places are counted in the grid divided by the
 * number of joints.
 */
final class CpFilling {

    private final CpModel model;
    private final CpScale scale;
    private final Stretch stretch;
    private final long parts;
    private final BoolVar chosen;
    private final IntVar[] pieces;
    private final IntVar rest;
    private final List<BoolVar> cuts = new ArrayList<>();
    private final List<CpJoint> joints = new ArrayList<>();

    CpFilling(CpModel model, CpScale scale, Stretch stretch, int count) {
        this.model = model;
        this.scale = scale;
        this.stretch = stretch;
        int jointCount = stretch.joints(count);
        this.parts = Math.max(1, jointCount);
        this.chosen = model.newBoolVar("chosen");
        this.pieces = new IntVar[count];
        this.rest = model.newIntVar(jointCount * scale.least(), jointCount * scale.most(), "rest");
        fill();
        for (int joint = 0; joint < jointCount; joint++) {
            joints.add(joint(joint));
        }
    }

    private void fill() {
        Domain lengths = Domain.fromValues(scale.all());
        for (int index = 0; index < pieces.length; index++) {
            pieces[index] = model.newIntVarFromDomain(lengths, "piece");
        }
        LinearExpr all = LinearExpr.newBuilder().addSum(pieces).add(rest).build();
        model.addEquality(all, scale.inGrid(stretch.length())).onlyEnforceIf(chosen);
        for (int index = 0; index < pieces.length; index++) {
            cuts.add(cut(index));
        }
    }

    /** A literal that must be true if the piece is cut, to length or along a rake. */
    private BoolVar cut(int index) {
        BoolVar cut = model.newBoolVar("cut");
        Domain uncut = Domain.fromValues(scale.uncut());
        model.addImplication(cut, chosen);
        model.addLinearExpressionInDomain(pieces[index], uncut).onlyEnforceIf(whole(cut));
        int jointsBefore = index + stretch.startJoint();
        if (stretch.clearFrom() != Long.MIN_VALUE) {
            model.addGreaterOrEqual(place(index, jointsBefore), scale.inGrid(stretch.clearFrom()) * parts)
                    .onlyEnforceIf(whole(cut));
        }
        if (stretch.clearTo() != Long.MAX_VALUE) {
            model.addLessOrEqual(place(index + 1, jointsBefore), scale.inGrid(stretch.clearTo()) * parts)
                    .onlyEnforceIf(whole(cut));
        }
        return cut;
    }

    private Literal[] whole(BoolVar cut) {
        return new Literal[]{chosen, cut.not()};
    }

    /** Where so many pieces and joints from the start of the run end. */
    private LinearArgument place(int piecesBefore, int jointsBefore) {
        LinearExprBuilder place = LinearExpr.newBuilder();
        place.add(scale.inGrid(stretch.from()) * parts);
        for (int index = 0; index < piecesBefore; index++) {
            place.addTerm(pieces[index], parts);
        }
        place.addTerm(rest, jointsBefore);
        return place;
    }

    private CpJoint joint(int joint) {
        int before = joint + 1 - stretch.startJoint();
        int after = pieces.length - before;
        long from = scale.inGrid(stretch.from()) * parts;
        long length = scale.inGrid(stretch.length()) * parts;
        long least = scale.least() * parts;
        long most = scale.most() * parts;
        long earliest = Math.max(before * scale.shortest() * parts + joint * least,
                length - after * scale.longest() * parts - (parts - joint) * most);
        long latest = Math.min(before * scale.longest() * parts + joint * most,
                length - after * scale.shortest() * parts - (parts - joint) * least);
        if (earliest > latest) {
            throw new IllegalStateException("%s cannot have %d pieces.".formatted(stretch, pieces.length));
        }
        IntVar start = model.newIntVar(from + earliest, from + latest, "joint");
        model.addEquality(place(before, joint), start).onlyEnforceIf(chosen);
        return new CpJoint(chosen, start, from + earliest, from + latest, rest, most, parts);
    }

    BoolVar chosen() {
        return chosen;
    }

    int pieceCount() {
        return pieces.length;
    }

    List<BoolVar> cuts() {
        return cuts;
    }

    List<CpJoint> joints() {
        return joints;
    }

    void hint(CpModel hinted, List<Long> lengths) {
        for (int index = 0; index < pieces.length; index++) {
            hinted.addHint(pieces[index], lengths.get(index));
        }
    }

    List<Long> lengths(CpSolver solver) {
        List<Long> lengths = new ArrayList<>();
        for (IntVar piece : pieces) {
            lengths.add(solver.value(piece));
        }
        return lengths;
    }
}
