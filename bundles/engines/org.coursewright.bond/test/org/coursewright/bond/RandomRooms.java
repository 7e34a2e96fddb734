package org.coursewright.bond;

import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.coursewright.measure.Length;

/** Seeded rooms for tests: four walls that meet at their corners, and a partition bonded into two of them. */
public final class RandomRooms {

    private static final Length THICKNESS = in("10");
    private static final Length BEFORE_PARTITION = in("40");

    private final Random random;

    public RandomRooms(long seed) {
        random = new Random(seed);
    }

    /** Walls W0 to W3 round the room, each with an opening at most, and P from W0 to W2. */
    public BondRequest room() {
        PieceStock stock = random.nextBoolean() ? stock("14") : stock("14", "10");
        List<WallFace> walls = new ArrayList<>();
        List<Meeting> meetings = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            walls.add(side(side, stock));
            meetings.add(new Meeting("C" + side, Meeting.Kind.CORNER, List.of("W" + (side + 3) % 4, "W" + side),
                    Optional.empty()));
        }
        walls.add(wall(quarters(60, 100)).mark("P").stocked(stock).ruled(someRule()).courses(4)
                .start(new WallEnd.Bonded("T0", THICKNESS)).end(new WallEnd.Bonded("T2", THICKNESS)).build());
        meetings.add(new Meeting("T0", Meeting.Kind.TEE, List.of("P", "W0"), Optional.empty()));
        meetings.add(new Meeting("T2", Meeting.Kind.TEE, List.of("P", "W2"), Optional.empty()));
        return new BondRequest(walls, meetings);
    }

    private WallFace side(int side, PieceStock stock) {
        Length length = quarters(100, 150);
        WallBuilder wall = wall(length).mark("W" + side).stocked(stock).ruled(someRule()).courses(5)
                .start(new WallEnd.Corner("C" + side, THICKNESS))
                .end(new WallEnd.Corner("C" + (side + 1) % 4, THICKNESS));
        if (side % 2 == 0) {
            wall.tee("T" + side, BEFORE_PARTITION, BEFORE_PARTITION.plus(THICKNESS));
        }
        if (random.nextBoolean()) {
            Length from = quarters(56, 70);
            Length to = from.plus(in("24"));
            wall.obstacle(Obstacle.Kind.OPENING, from, to, 2, 3);
            wall.obstacle(Obstacle.Kind.LINTEL, from.minus(in("6")), to.plus(in("6")), 4, 4);
        }
        return wall.build();
    }

    private static JointRule someRule() {
        return rule("3 1/2", "3/8", "1/2", "3/4");
    }

    private Length quarters(int least, int most) {
        return in("1/4").times(4L * least + random.nextInt(4 * (most - least) + 1));
    }
}
