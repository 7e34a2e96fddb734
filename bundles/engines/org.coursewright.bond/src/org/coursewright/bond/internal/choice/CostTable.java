package org.coursewright.bond.internal.choice;

import java.util.Arrays;

/**
 * Costs of the values of some variables together.
 *
 * @param scope the variables, ascending
 * @param sizes how many values each has
 * @param costs by value of the first variable, then the second, and so on; the last runs fastest
 */
public record CostTable(int[] scope, int[] sizes, long[] costs) {

    /** The step in {@code costs} from one value of the variable at that place of the scope to the next. */
    int stride(int place) {
        int stride = 1;
        for (int later = place + 1; later < sizes.length; later++) {
            stride *= sizes[later];
        }
        return stride;
    }

    int place(int variable) {
        for (int place = 0; place < scope.length; place++) {
            if (scope[place] == variable) {
                return place;
            }
        }
        throw new IllegalArgumentException("Variable %d is not in the table.".formatted(variable));
    }

    /** The cost under a choice of a value for every variable of the network. */
    public long at(int[] chosen) {
        return costs[index(chosen)];
    }

    /** Where that cost stands in {@code costs}. */
    int index(int[] chosen) {
        int index = 0;
        for (int place = 0; place < scope.length; place++) {
            index = index * sizes[place] + chosen[scope[place]];
        }
        return index;
    }

    /** The least of all costs. */
    public long least() {
        return Arrays.stream(costs).min().orElse(0);
    }

    /** Adds to every value of the variable the least cost it meets here. */
    void addLeast(int variable, long[] outlook) {
        int place = place(variable);
        int stride = stride(place);
        long[] least = new long[outlook.length];
        Arrays.fill(least, Long.MAX_VALUE);
        for (int index = 0; index < costs.length; index++) {
            int value = index / stride % sizes[place];
            least[value] = Math.min(least[value], costs[index]);
        }
        for (int value = 0; value < outlook.length; value++) {
            outlook[value] += least[value];
        }
    }

    /** What is left when the variable has that value. */
    CostTable without(int variable, int value) {
        int gone = place(variable);
        int[] scopeLeft = new int[scope.length - 1];
        int[] sizesLeft = new int[scope.length - 1];
        for (int place = 0, left = 0; place < scope.length; place++) {
            if (place != gone) {
                scopeLeft[left] = scope[place];
                sizesLeft[left++] = sizes[place];
            }
        }
        int stride = stride(gone);
        long[] costsLeft = new long[costs.length / sizes[gone]];
        for (int index = 0; index < costsLeft.length; index++) {
            costsLeft[index] = costs[(index / stride * sizes[gone] + value) * stride + index % stride];
        }
        return new CostTable(scopeLeft, sizesLeft, costsLeft);
    }
}
