package org.coursewright.bond;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** With how many pieces a level run can be filled, and with how few cuts each; by trying every number of each kind. */
final class RunCounts {

    private final WallFace wall;
    private final long length;
    private final int ends;

    RunCounts(WallFace wall, Run run) {
        this.wall = wall;
        this.length = run.length().units();
        this.ends = (run.startsWith() == RunEnd.JOINT ? 1 : 0) + (run.endsWith() == RunEnd.JOINT ? 1 : 0);
    }

    int fewestCuts() {
        return counts(Integer.MAX_VALUE).stream().mapToInt(count -> fewestCuts(count).orElseThrow()).min()
                .orElseThrow();
    }

    /** Numbers of pieces that need at most so many cuts more than the best. */
    List<Integer> within(int slack) {
        return counts(fewestCuts() + slack);
    }

    private List<Integer> counts(int mostCuts) {
        List<Integer> counts = new ArrayList<>();
        for (int count = 1; count <= length / shortest() + 1; count++) {
            OptionalInt cuts = fewestCuts(count);
            if (cuts.isPresent() && cuts.getAsInt() <= mostCuts) {
                counts.add(count);
            }
        }
        return counts;
    }

    private long shortest() {
        return wall.stock().specials().stream().mapToLong(special -> special.units())
                .reduce(wall.stock().shortestPiece().units(), Math::min);
    }

    private OptionalInt fewestCuts(int count) {
        for (int cuts = 0; cuts <= count; cuts++) {
            if (isFilled(0, count - cuts, 0, cuts, count)) {
                return OptionalInt.of(cuts);
            }
        }
        return OptionalInt.empty();
    }

    /** Tries every number of each stocked length, the whole unit first. */
    private boolean isFilled(int kind, int left, long laid, int cuts, int count) {
        if (kind > wall.stock().specials().size()) {
            return left == 0 && isFilled(laid, cuts, count);
        }
        long piece = kind == 0 ? wall.stock().whole().units() : wall.stock().specials().get(kind - 1).units();
        for (int number = 0; number <= left; number++) {
            if (isFilled(kind + 1, left - number, laid + number * piece, cuts, count)) {
                return true;
            }
        }
        return false;
    }

    private boolean isFilled(long laid, int cuts, int count) {
        long step = wall.stock().cutStep().units();
        long least = (wall.stock().shortestPiece().units() + step - 1) / step * step;
        long most = (wall.stock().whole().units() - 1) / step * step;
        int joints = count - 1 + ends;
        long from = Math.max(cuts * least, length - laid - joints * wall.rule().most().units());
        long to = Math.min(cuts * most, length - laid - joints * wall.rule().least().units());
        return from <= to && (cuts == 0 ? from == 0 || from <= 0 && to >= 0 : Math.floorDiv(to, step) * step >= from);
    }
}
