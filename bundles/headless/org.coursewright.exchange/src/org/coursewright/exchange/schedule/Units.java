package org.coursewright.exchange.schedule;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.coursewright.exchange.table.Rows;

/** The units that walls may be of: those of the schedule, then the built-in ones. */
final class Units {

    private final Rows<UnitRow> scheduled;
    private final BuiltInUnits builtIn = new BuiltInUnits();

    Units(Rows<UnitRow> scheduled) {
        this.scheduled = scheduled;
    }

    Optional<UnitRow> find(String mark) {
        return scheduled.mayName(mark) ? scheduled.find(mark) : builtIn.find(mark);
    }

    /** @return whether a wall may name it, be the unit's own row sound or not */
    boolean mayName(String mark) {
        return scheduled.mayName(mark) || builtIn.find(mark).isPresent();
    }

    /** @return all units of the schedule and those built-in ones that a wall is of */
    List<UnitRow> neededBy(List<WallRow> walls) {
        Stream<UnitRow> used = walls.stream().flatMap(wall -> find(wall.unit()).stream());
        return Stream.concat(scheduled.sound().stream(), used).distinct().toList();
    }

    /** @return all marks, for messages */
    String marks() {
        return Stream.concat(scheduled.sound().stream().map(UnitRow::mark), builtIn.marks().stream()).limit(30)
                .collect(Collectors.joining(", "));
    }
}
