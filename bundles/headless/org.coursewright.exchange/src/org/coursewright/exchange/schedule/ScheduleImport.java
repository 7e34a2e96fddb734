package org.coursewright.exchange.schedule;

import java.util.Objects;

import org.coursewright.core.session.ElementIds;
import org.coursewright.exchange.estimate.EstimateFolder;
import org.coursewright.exchange.remark.Place;
import org.coursewright.exchange.remark.Remarks;
import org.coursewright.exchange.table.Rows;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.project.Project;

/** Reads schedules and makes a project of them. Writes nothing. */
public final class ScheduleImport {

    private final ImportSettings settings;

    /** @param settings what the schedules do not say, not null */
    public ScheduleImport(ImportSettings settings) {
        this.settings = Objects.requireNonNull(settings, "settings");
    }

    /**
     * Reads the files.
     *
     * @param files the schedules, not null
     * @return a project if nothing is wrong with them, otherwise everything that is
     */
    public ImportOutcome read(ScheduleFiles files) {
        Remarks remarks = new Remarks();
        LengthFormat format = settings.format();
        Rows<UnitRow> unitRows = files.units()
                .map(path -> new UnitSchedule(format.unit()).read(path, format, remarks)).orElseGet(Rows::none);
        Rows<WallRow> walls = new WallSchedule().read(files.walls(), format, remarks);
        Units units = new Units(unitRows);
        new WallChecks(units, remarks).noteUnknownUnits(walls.all());
        boolean wallsAreKnown = !remarks.hasErrors();
        Rows<OpeningRow> openings = new OpeningSchedule().read(files.openings(), format, remarks);
        return new Reading(files, units, walls, openings, remarks).outcome(wallsAreKnown);
    }

    /** What was read, on its way to an outcome. */
    private final class Reading {

        private final ScheduleFiles files;
        private final Units units;
        private final Rows<WallRow> walls;
        private final Rows<OpeningRow> openings;
        private final Remarks remarks;

        Reading(ScheduleFiles files, Units units, Rows<WallRow> walls, Rows<OpeningRow> openings, Remarks remarks) {
            this.files = files;
            this.units = units;
            this.walls = walls;
            this.openings = openings;
            this.remarks = remarks;
        }

        /** Where walls are known, faults of openings do not keep back what is wrong with the plan: all is told at once. */
        ImportOutcome outcome(boolean wallsAreKnown) {
            new OpeningChecks(remarks).noteUnknownWalls(openings.all(), walls);
            if (!wallsAreKnown) {
                return refused();
            }
            ProjectAssembly assembly = new ProjectAssembly(settings, units, new Plan(walls.sound(), units), remarks);
            Project project = assembly.project(walls, openings.sound());
            files.estimate().ifPresent(folder -> new EstimateFolder(folder, settings.format()).readInto(project,
                    remarks));
            ElementIds.seed(project);
            new ModelChecks(assembly.rows(), Place.of(files.walls().toString()), remarks).noteInvalid(project);
            return remarks.hasErrors() ? refused() : new ImportOutcome.Imported(project, remarks.warnings());
        }

        private ImportOutcome refused() {
            return new ImportOutcome.Refused(remarks.errors(), remarks.warnings());
        }
    }
}
