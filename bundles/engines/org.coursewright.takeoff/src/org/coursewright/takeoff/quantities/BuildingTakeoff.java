package org.coursewright.takeoff.quantities;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.takeoff.InvalidTakeoffException;
import org.coursewright.takeoff.nesting.CutPlan;
import org.coursewright.takeoff.nesting.CutPlanner;
import org.coursewright.takeoff.nesting.CutStock;

/** Takes off a building: measures its walls, nests the cut pieces of all of them together, and sums up mortar by mix. */
public final class BuildingTakeoff {

    private record TypeAndFace(UnitShape unit, Length face) {
    }

    private final MortarRule mortar;
    private final Map<String, UnitRule> units;
    private final CutPlanner planner;

    /**
     * @param mortar mixes, waste and fill of joints
     * @param units how units are cut and break, by unit type
     * @param planner plans the cutting
     */
    public BuildingTakeoff(MortarRule mortar, Map<String, UnitRule> units, CutPlanner planner) {
        this.mortar = Objects.requireNonNull(mortar, "mortar");
        this.units = Map.copyOf(units);
        this.planner = Objects.requireNonNull(planner, "planner");
    }

    /**
     * @param walls as laid
     * @param progress asked whether the quantities are still wanted
     * @return what they take
     * @throws org.coursewright.takeoff.InvalidTakeoffException if a unit type has no rule, two shapes have the same type,
     *         or a cut piece is longer than its unit
     * @throws java.util.concurrent.CancellationException if they are no longer wanted
     */
    public BuildingQuantities measure(List<LaidWall> walls, Progress progress) {
        requireOneShapeForEachType(walls);
        WallTakeoff takeoff = new WallTakeoff(mortar.fill());
        List<WallQuantities> measured = walls.stream().map(takeoff::measure).toList();
        Map<TypeAndFace, List<WallQuantities>> byType = new LinkedHashMap<>();
        measured.forEach(wall -> byType.computeIfAbsent(new TypeAndFace(wall.wall().unit(), wall.wall().face()),
                key -> new ArrayList<>()).add(wall));
        List<UnitOrder> orders = byType.entrySet().stream().map(type -> order(type.getKey(), type.getValue(), progress))
                .toList();
        return new BuildingQuantities(measured, orders, mortars(measured));
    }

    private void requireOneShapeForEachType(List<LaidWall> walls) {
        Map<String, UnitShape> shapes = new HashMap<>();
        for (LaidWall wall : walls) {
            UnitShape known = shapes.putIfAbsent(wall.unit().type(), wall.unit());
            require(known == null || known.equals(wall.unit()),
                    "Wall %s has unit type %s in another size than walls before it: give it another name.",
                    wall.mark(), wall.unit().type());
        }
    }

    private UnitOrder order(TypeAndFace type, List<WallQuantities> walls, Progress progress) {
        UnitRule rule = Optional.ofNullable(units.get(type.unit().type())).orElseThrow(
                () -> new InvalidTakeoffException("Unit type %s has no rule for kerf and breakage: give it one."
                        .formatted(type.unit().type())));
        PieceTally pieces = walls.stream().map(WallQuantities::pieces).reduce(PieceTally.NONE, PieceTally::plus);
        CutPlan plan = planner.plan(new CutStock(type.face(), rule.kerf(), rule.endTrimmed()), pieces.cuts(), progress);
        return new UnitOrder(type.unit(), type.face(), walls.stream().map(WallPieces::of).toList(), pieces,
                walls.stream().mapToLong(WallQuantities::lowPieces).sum(), plan, rule.breakage());
    }

    private List<MortarOrder> mortars(List<WallQuantities> walls) {
        Map<String, MortarOrder> byMix = new LinkedHashMap<>();
        for (boolean first : new boolean[]{true, false}) {
            MortarOrder order = mortar(walls, first);
            if (!order.courses().isEmpty()) {
                byMix.merge(order.mix(), order, MortarOrder::plus);
            }
        }
        return List.copyOf(byMix.values());
    }

    private MortarOrder mortar(List<WallQuantities> walls, boolean first) {
        List<String> courses = new ArrayList<>();
        MortarVolumes net = MortarVolumes.NONE;
        for (WallQuantities wall : walls) {
            for (CourseQuantities course : wall.courses()) {
                if (MortarRule.isFirst(course.course()) == first) {
                    courses.add(wall.wall().element(course.course()));
                    net = net.plus(course.mortar());
                }
            }
        }
        return first
                ? new MortarOrder(mortar.firstMix(), courses, net, mortar.firstWaste())
                : new MortarOrder(mortar.restMix(), courses, net, mortar.restWaste());
    }
}
