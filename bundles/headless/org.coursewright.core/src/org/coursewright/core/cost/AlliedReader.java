package org.coursewright.core.cost;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.measure.Length;
import org.coursewright.model.building.BondBeam;
import org.coursewright.model.building.Building;
import org.coursewright.model.building.Finish;
import org.coursewright.model.building.GradeBeam;
import org.coursewright.model.building.Reinforcement;
import org.coursewright.model.building.Wall;
import org.coursewright.model.building.WallSide;
import org.coursewright.model.project.Project;
import org.coursewright.takeoff.allied.Bar;
import org.coursewright.takeoff.allied.BarRun;

/** Reads beams and finishes. */
final class AlliedReader {

    /** Foundations (ASTM E1557). */
    private static final String FOUNDATIONS = "A1010";
    private static final String WALLS = "B2010";
    /** Of a length that a building can have. */
    private static final int MOST_BITS = 40;

    private final Optional<Building> building;
    private final MixReader mixes;
    private final Findings findings;

    AlliedReader(Project project, MixReader mixes, Findings findings) {
        building = Optional.ofNullable(project.getBuilding());
        this.mixes = mixes;
        this.findings = findings;
    }

    List<BeamBrief> beams() {
        List<BeamBrief> beams = new ArrayList<>();
        building.ifPresent(each -> {
            each.getGradeBeams().forEach(beam -> grade(beam).ifPresent(beams::add));
            each.getBondBeams().forEach(beam -> bond(beam).ifPresent(beams::add));
        });
        return beams;
    }

    private Optional<BeamBrief> grade(GradeBeam beam) {
        ElementReference element = ElementReference.of(beam, "grade beam " + beam.getMark());
        Length length = length(beam.getWalls());
        return isSized(element, length, beam.getWidth(), beam.getDepth())
                ? Optional.of(new BeamBrief(element.name(), FOUNDATIONS, true, length, beam.getWidth(), beam.getDepth(),
                        mixes
                                .find(beam.getMix()),
                        bars(element, beam.getReinforcement(), length),
                        lines(beam
                                .getReinforcement())))
                : Optional.empty();
    }

    private Optional<BeamBrief> bond(BondBeam beam) {
        ElementReference element = ElementReference.of(beam, "bond beam " + beam.getMark());
        Length length = length(beam.getWalls());
        return isSized(element, length, beam.getWidth(), beam.getDepth())
                ? Optional.of(new BeamBrief(element.name(), WALLS, false, length, beam.getWidth(), beam.getDepth(),
                        mixes.find(
                                beam.getMix()),
                        bars(element, beam.getReinforcement(), length),
                        lines(beam
                                .getReinforcement())))
                : Optional.empty();
    }

    private boolean isSized(ElementReference element, Length length, Length width, Length depth) {
        boolean sized = length.signum() > 0 && width != null && width.signum() > 0 && depth != null
                && depth.signum() > 0;
        if (!sized) {
            findings.warning("beam.size", element, "It needs walls, a width and a depth, else it is not counted.");
        }
        return sized;
    }

    private static int lines(Reinforcement steel) {
        return steel == null ? 0 : Math.max(0, steel.getLines());
    }

    private Optional<BarRun> bars(ElementReference element, Reinforcement steel, Length length) {
        if (steel == null) {
            return Optional.empty();
        }
        Optional<Bar> bar = Stream.of(Bar.metricSizes(), Bar.inchSizes()).flatMap(List::stream)
                .filter(each -> each.designation().equals(steel.getBar())).findFirst();
        Length stock = Optional.ofNullable(steel.getStock()).orElse(length);
        Length lap = Optional.ofNullable(steel.getLap()).orElse(Length.ZERO);
        boolean sound = bar.isPresent() && lap.signum() >= 0 && stock.isGreaterThan(lap);
        if (!sound) {
            findings.error("beam.steel", element,
                    "Its bar %s in lengths of %s with laps of %s cannot be counted. Use such as #4 or 12 mm, longer than the lap."
                            .formatted(steel.getBar(), stock, lap));
        }
        return bar.filter(each -> sound).map(each -> new BarRun(each, length, stock, lap));
    }

    /** Along centre lines, so that corners count once. */
    private static Length length(List<Wall> walls) {
        return walls.stream().map(AlliedReader::length).reduce(Length.ZERO, Length::plus);
    }

    private static Length length(Wall wall) {
        BigInteger x = distance(wall.getFromX(), wall.getToX());
        BigInteger y = distance(wall.getFromY(), wall.getToY());
        BigInteger length = x.multiply(x).add(y.multiply(y)).sqrt();
        return length.bitLength() > MOST_BITS ? Length.ZERO : Length.ofUnits(length.longValueExact());
    }

    private static BigInteger distance(Length from, Length to) {
        return BigInteger.valueOf(to.units()).subtract(BigInteger.valueOf(from.units()));
    }

    List<PlasterBrief> plaster() {
        Function<Wall, Stream<PlasterBrief>> ofWall = wall -> wall.getFinishes().stream().flatMap(finish -> of(finish,
                wall).stream());
        return building.stream().flatMap(each -> each.getStoreys().stream()).flatMap(storey -> storey.getWalls()
                .stream()).filter(wall -> wall.getMark() != null).flatMap(ofWall).collect(Collectors.toList());
    }

    private Optional<PlasterBrief> of(Finish finish, Wall wall) {
        if (finish.getType() == null || finish.getType().getThickness() == null || finish.getType().getThickness()
                .signum() <= 0) {
            findings.warning("finish.thickness", ElementReference.of(finish, "finish of wall " + wall.getMark()),
                    "It needs a type with a thickness, else it is not counted.");
            return Optional.empty();
        }
        return Optional.of(new PlasterBrief(String.valueOf(finish.getType().getMark()), wall.getMark(),
                finish.getSide() == WallSide.BOTH ? 2 : 1, finish.getType().getThickness(),
                Optional.ofNullable(finish.getFrom()), Optional.ofNullable(finish.getTo()), mixes.find(finish.getType()
                        .getMix())));
    }
}
