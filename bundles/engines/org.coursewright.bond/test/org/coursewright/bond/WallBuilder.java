package org.coursewright.bond;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.measure.Length;

/** Walls for tests: a 14 by 10 by 4 in unit with half-inch joints unless told otherwise. */
public final class WallBuilder {

    private String mark = "W1";
    private Length length = Length.ZERO;
    private PieceStock stock = stock("14");
    private JointRule rule = rule("3 1/2", "3/8", "1/2", "3/4");
    private int courses = 2;
    private List<Course> ownCourses = List.of();
    private WallEnd start = new WallEnd.Free();
    private WallEnd end = new WallEnd.Free();
    private final List<Obstacle> obstacles = new ArrayList<>();
    private final List<Pin> pins = new ArrayList<>();

    /** Inches as a number and a fraction, such as {@code 3 1/2}. */
    public static Length in(String text) {
        long units = 0;
        for (String part : text.trim().split(" ")) {
            String[] fraction = part.split("/");
            units += Length.ofInchFraction(Long.parseLong(fraction[0]),
                    fraction.length == 1 ? 1 : Long.parseLong(fraction[1])).units();
        }
        return Length.ofUnits(units);
    }

    public static Length mm(long millimetres) {
        return Length.ofMillimetres(millimetres);
    }

    /** Cut from 3 1/2 in up in quarter inches, with a kerf of 1/8 in. */
    public static PieceStock stock(String whole, String... specials) {
        List<Length> lengths = new ArrayList<>();
        for (String special : specials) {
            lengths.add(in(special));
        }
        return new PieceStock(in(whole), lengths, in("3 1/2"), in("1/4"), in("1/8"));
    }

    public static JointRule rule(String lap, String least, String nominal, String most) {
        return new JointRule(in(lap), in(least), in(nominal), in(most));
    }

    public static WallBuilder wall(Length length) {
        return new WallBuilder().length(length);
    }

    public static WallBuilder wall(String inches) {
        return wall(in(inches));
    }

    public WallBuilder mark(String value) {
        mark = value;
        return this;
    }

    public WallBuilder length(Length value) {
        length = value;
        return this;
    }

    public WallBuilder stocked(PieceStock value) {
        stock = value;
        return this;
    }

    public WallBuilder ruled(JointRule value) {
        rule = value;
        return this;
    }

    public WallBuilder courses(int value) {
        courses = value;
        return this;
    }

    public WallBuilder courses(List<Course> value) {
        ownCourses = value;
        return this;
    }

    public WallBuilder start(WallEnd value) {
        start = value;
        return this;
    }

    public WallBuilder end(WallEnd value) {
        end = value;
        return this;
    }

    public WallBuilder obstacle(Obstacle.Kind kind, Length from, Length to, int first, int last) {
        obstacles.add(new Obstacle(kind, kind.name(), from, to, first, last, Optional.empty()));
        return this;
    }

    public WallBuilder tee(String meeting, Length from, Length to) {
        obstacles.add(new Obstacle(Obstacle.Kind.TEE, meeting, from, to, 1, courses, Optional.of(meeting)));
        return this;
    }

    public WallBuilder pinned(Pin pin) {
        pins.add(pin);
        return this;
    }

    public WallFace build() {
        List<Course> levels = new ArrayList<>(ownCourses);
        for (int number = 1; ownCourses.isEmpty() && number <= courses; number++) {
            Length height = in("4 1/2");
            levels.add(Course.level(number, number, height.times(number - 1L), height, length));
        }
        return new WallFace(mark, length, stock, rule, levels, start, end, obstacles, pins);
    }

    /** A request of this wall alone. */
    public BondRequest alone() {
        return new BondRequest(List.of(build()), List.of());
    }
}
