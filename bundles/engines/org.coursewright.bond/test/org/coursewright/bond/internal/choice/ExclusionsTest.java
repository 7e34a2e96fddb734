package org.coursewright.bond.internal.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** Exclusions of three runs against a table that marks each combination. */
class ExclusionsTest {

    private static final int[] SCOPE = {0, 1, 2};

    private final Random random = new Random(11);

    private boolean[][][] marks(int[] sizes) {
        boolean[][][] marks = new boolean[sizes[0]][sizes[1]][sizes[2]];
        for (boolean[][] plane : marks) {
            for (boolean[] row : plane) {
                for (int value = 0; value < row.length; value++) {
                    row[value] = random.nextInt(4) == 0;
                }
            }
        }
        return marks;
    }

    private static Exclusions of(boolean[][][] marks, int[] sizes) {
        Exclusions none = Exclusions.none(sizes);
        long[] indexes = IntStream.range(0, sizes[0] * sizes[1] * sizes[2]).filter(index -> {
            int[] at = {index / sizes[2] / sizes[1], index / sizes[2] % sizes[1], index % sizes[2]};
            return marks[at[0]][at[1]][at[2]];
        }).asLongStream().toArray();
        return none.with(Arrays.copyOf(indexes, indexes.length / 2)).with(indexes);
    }

    private static boolean isExcluded(Exclusions exclusions, int... chosen) {
        return exclusions.costs(SCOPE).at(chosen) > 0;
    }

    private int[] sizes() {
        return new int[]{1 + random.nextInt(4), 1 + random.nextInt(4), 1 + random.nextInt(4)};
    }

    private static int[] ascending(Random random, int size) {
        int[] kept = IntStream.range(0, size).filter(value -> random.nextBoolean()).toArray();
        return kept.length == 0 ? new int[]{size - 1} : kept;
    }

    @Test
    void whatIsAmongChoicesLeftIsWhatWasExcludedOfThem() {
        for (int round = 0; round < 200; round++) {
            int[] sizes = sizes();
            boolean[][][] marks = marks(sizes);
            int[][] kept = {ascending(random, sizes[0]), ascending(random, sizes[1]), ascending(random, sizes[2])};
            Exclusions among = of(marks, sizes).among(kept);
            for (int one = 0; one < kept[0].length; one++) {
                for (int two = 0; two < kept[1].length; two++) {
                    for (int three = 0; three < kept[2].length; three++) {
                        assertThat(isExcluded(among, one, two, three))
                                .isEqualTo(marks[kept[0][one]][kept[1][two]][kept[2][three]]);
                    }
                }
            }
        }
    }

    @Test
    void partsOfAChoiceAreExcludedWithTheChoice() {
        for (int round = 0; round < 200; round++) {
            int[] sizes = sizes();
            boolean[][][] marks = marks(sizes);
            int[] parts = random.ints(1 + random.nextInt(6), 0, sizes[1]).sorted().toArray();
            Exclusions split = of(marks, sizes).split(1, parts);
            for (int one = 0; one < sizes[0]; one++) {
                for (int part = 0; part < parts.length; part++) {
                    for (int three = 0; three < sizes[2]; three++) {
                        assertThat(isExcluded(split, one, part, three)).isEqualTo(marks[one][parts[part]][three]);
                    }
                }
            }
        }
    }

    @Test
    void rowIsWithinAnotherIfAllThatExcludesTheOneExcludesTheOther() {
        for (int round = 0; round < 200; round++) {
            int[] sizes = sizes();
            boolean[][][] marks = marks(sizes);
            BitRows rows = of(marks, sizes).rows(0);
            for (int few = 0; few < sizes[0]; few++) {
                for (int many = 0; many < sizes[0]; many++) {
                    assertThat(rows.isWithin(few, many)).isEqualTo(isWithin(marks[few], marks[many]));
                }
            }
        }
    }

    /** So many combinations of the others are numbered only as far as they are excluded. */
    @Test
    void rowsOfManyCombinationsCompareAlike() {
        Exclusions none = Exclusions.none(3, 100, 100);
        Exclusions some = none.with(none.index(SCOPE, new int[]{0, 5, 99}), none.index(SCOPE, new int[]{1, 5, 99}),
                none.index(SCOPE, new int[]{1, 70, 2}));

        assertThat(some.rows(0).isWithin(0, 1)).isTrue();
        assertThat(some.rows(0).isWithin(1, 0)).isFalse();
        assertThat(some.rows(0).isWithin(2, 0)).isTrue();
        assertThat(some.count()).isEqualTo(3);
    }

    private static boolean isWithin(boolean[][] few, boolean[][] many) {
        for (int two = 0; two < few.length; two++) {
            for (int three = 0; three < few[two].length; three++) {
                if (few[two][three] && !many[two][three]) {
                    return false;
                }
            }
        }
        return true;
    }
}
