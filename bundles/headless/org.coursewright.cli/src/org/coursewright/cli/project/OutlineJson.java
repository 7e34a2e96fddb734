package org.coursewright.cli.project;

import java.util.Optional;

import org.coursewright.cli.JsonText;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;

/** A project as a JSON outline; what is not given is left out. */
final class OutlineJson {

    private final JsonText json;

    private OutlineJson(JsonText json) {
        this.json = json;
    }

    static String of(Project project) {
        Contents contents = new Contents(project);
        return JsonText.document("coursewright.describe/1", json -> new OutlineJson(json).write(contents));
    }

    private void write(Contents contents) {
        json.member("project", contents.name());
        json.array("units", contents.units(), unit -> json.object(() -> write(unit)));
        json.array("storeys", contents.storeys(), storey -> json.object(() -> write(storey)));
    }

    private void write(UnitType unit) {
        json.member("mark", Contents.mark(unit));
        length("length", unit.getLength());
        length("width", unit.getWidth());
        length("height", unit.getHeight());
        Optional.ofNullable(unit.getMass()).ifPresent(mass -> json.member("massKg", mass));
        json.lengths("specialLengths", unit.getSpecialLengths());
    }

    private void write(Storey storey) {
        json.member("mark", Contents.mark(storey));
        length("elevation", storey.getElevation());
        json.array("walls", storey.getWalls(), wall -> json.object(() -> write(wall)));
    }

    private void write(Wall wall) {
        json.member("mark", Contents.mark(wall));
        length("fromX", wall.getFromX());
        length("fromY", wall.getFromY());
        length("toX", wall.getToX());
        length("toY", wall.getToY());
        length("base", wall.getBase());
        length("height", wall.getHeight());
        json.member("unit", Contents.mark(wall.getUnitType()));
        json.member("bond", wall.getBond().getLiteral());
        json.array("top", wall.getTopProfile(), point -> json.object(() -> {
            length("offset", point.getOffset());
            length("height", point.getHeight());
        }));
        length("move", wall.getMoveTolerance());
        length("size", wall.getSizeTolerance());
        json.array("openings", wall.getOpenings(), opening -> json.object(() -> write(opening)));
    }

    private void write(Opening opening) {
        json.member("mark", Contents.mark(opening));
        json.member("kind", opening.getKind().getLiteral());
        length("offset", opening.getOffset());
        length("width", opening.getWidth());
        length("sill", opening.getSill());
        length("height", opening.getHeight());
        length("move", opening.getMoveTolerance());
        length("size", opening.getSizeTolerance());
        Optional.ofNullable(opening.getLintelType()).ifPresent(lintel -> json.member("lintel", Contents.mark(lintel)));
    }

    private void length(String name, Length value) {
        Optional.ofNullable(value).ifPresent(length -> json.member(name, length));
    }
}
