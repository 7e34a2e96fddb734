package org.coursewright.core.bond;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.Course;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallFace;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Findings;
import org.coursewright.core.geometry.CentreLine;
import org.coursewright.core.geometry.Crossing;
import org.coursewright.core.geometry.WallNetwork;
import org.coursewright.core.validity.ElementNames;
import org.coursewright.core.validity.OpeningValidity;
import org.coursewright.core.validity.UnitValidity;
import org.coursewright.core.validity.WallValidity;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.BondBeam;
import org.coursewright.model.building.Building;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;

/** Reads a project's walls into a request for the bond engine. Reads only; confined to the model's thread. */
public final class BondTranslator {

    private final Project project;
    private final LengthFormat format;
    private final Findings findings = new Findings();
    private final List<WallFace> faces = new ArrayList<>();
    private final Map<String, ElementReference> references = new HashMap<>();
    private final List<Meeting> meetings = new ArrayList<>();
    private final List<Abutment> abutments = new ArrayList<>();
    private final Set<String> marks = new HashSet<>();
    private long units;
    private final Map<UnitType, Boolean> soundUnits = new LinkedHashMap<>();

    private BondTranslator(Project project) {
        this.project = project;
        this.format = ProjectFormat.of(project);
    }

    /**
     * Reads the whole building.
     *
     * @param project the project, not null; it is not changed
     * @return the request for all walls that are sound, and the findings about all that are not
     */
    public static Translation translate(Project project) {
        BondTranslator translator = new BondTranslator(project);
        translator.building().ifPresent(building -> building.getStoreys().forEach(translator::read));
        SoundRequest sound = new SoundRequest(translator.faces, translator.meetings);
        return new Translation(sound.request(), translator.references, translator.abutments, translator.format,
                translator.findings.gravestFirst());
    }

    private Optional<Building> building() {
        return Optional.ofNullable(project.getBuilding());
    }

    private void read(Storey storey) {
        Map<String, WallPlan> plans = plans(storey);
        Set<String> sound = new HashSet<>();
        plans.values().stream().filter(this::isSound).map(WallPlan::mark).forEach(sound::add);
        plans.values().stream().filter(plan -> sound.contains(plan.mark())).forEach(this::add);
    }

    private Map<String, WallPlan> plans(Storey storey) {
        Map<String, Wall> walls = new LinkedHashMap<>();
        Map<String, WallBody> bodies = new LinkedHashMap<>();
        WallValidity validity = new WallValidity(format, findings);
        for (Wall wall : storey.getWalls()) {
            if (validity.isSound(wall) && isUnitSound(wall.getUnitType()) && isNew(wall)) {
                walls.put(wall.getMark(), wall);
                bodies.put(wall.getMark(), WallBody.of(wall, project));
            }
        }
        WallNetwork network = WallNetwork.of(walls.values().stream().map(wall -> centreLine(wall, bodies)).toList());
        new NetworkFindings(format, findings, walls).tell(network);
        network.leftOut().forEach(wall -> walls.remove(wall.mark()));
        if (leaveOutOverlapping(network, walls)) {
            network = WallNetwork.of(walls.values().stream().map(wall -> centreLine(wall, bodies)).toList());
        }
        Map<String, WallPlan> plans = new LinkedHashMap<>();
        for (Wall wall : walls.values()) {
            plans.put(wall.getMark(), new WallPlan(wall, bodies.get(wall.getMark()), network.faces(wall.getMark()),
                    storey.getElevation()));
        }
        StoreyMeetings reading = new StoreyMeetings(plans, HandingChoices.of(building()),
                new MeetingFindings(format, findings));
        network.meetings().forEach(reading::read);
        meetings.addAll(reading.meetings());
        abutments.addAll(reading.abutments());
        return plans;
    }

    /** Walls that lie in each other would meet themselves: the second of each pair is not laid. */
    private static boolean leaveOutOverlapping(WallNetwork network, Map<String, Wall> walls) {
        return network.crossings().stream().filter(crossing -> crossing.kind() == Crossing.Kind.OVERLAP)
                .map(crossing -> walls.remove(crossing.second()) != null).reduce(false, Boolean::logicalOr);
    }

    private boolean isUnitSound(UnitType unit) {
        return soundUnits.computeIfAbsent(unit, found -> new UnitValidity(format, findings).isSound(found));
    }

    private boolean isNew(Wall wall) {
        boolean isNew = marks.add(wall.getMark().strip().toLowerCase(Locale.ROOT));
        if (!isNew) {
            findings.invalid("wall.duplicate-mark", ElementNames.of(wall),
                    "Another wall has the same mark. Give every wall a mark of its own.");
        }
        return isNew;
    }

    private static CentreLine centreLine(Wall wall, Map<String, WallBody> bodies) {
        return new CentreLine(wall.getMark(), wall.getFromX(), wall.getFromY(), wall.getToX(), wall.getToY(),
                bodies.get(wall.getMark()).thickness());
    }

    private boolean isSound(WallPlan plan) {
        WallSoundness soundness = new WallSoundness(plan, format, findings);
        if (!soundness.isSound() || !soundness.isAffordable(units)) {
            return false;
        }
        units += soundness.units();
        return new OpeningValidity(format, findings).areSound(plan.wall(), plan.length(), plan.top()::lowestBetween);
    }

    private void add(WallPlan plan) {
        faces.add(face(plan));
        references.put(plan.mark(), ElementNames.of(plan.wall()));
    }

    private WallFace face(WallPlan plan) {
        List<Course> courses = plan.courses();
        List<BondBeam> beams = building().map(building -> List.copyOf(building.getBondBeams())).orElse(List.of());
        List<Obstacle> obstacles = new ArrayList<>(
                OpeningObstacles.of(plan.wall(), plan.length(), plan.lines(), format, findings));
        obstacles.addAll(BeamObstacles.of(plan.wall(), beams, plan.length(), plan.lines(), plan.top().highest(), format,
                findings));
        obstacles.addAll(plan.tees());
        return new WallFace(plan.mark(), plan.length(), plan.body().stock(), plan.body().rule().joints(), courses,
                plan.start(), plan.end(), obstacles, WallPins.of(plan.wall(), findings));
    }
}
