package org.coursewright.exchange.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.coursewright.exchange.remark.Remark;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.project.Project;

/** Two rooms, six walls, three openings, typed by hand; a test changes what it is about. */
final class ScheduleFixture {

    static final String WALLS = """
            mark,from_x,from_y,to_x,to_y,unit,bond,base,height,storey
            W1,0,0,20',0,14x10x4,stretcher,0,90,1
            W2,20',0,20',12',14x10x4,stretcher,0,90,1
            W3,20',12',0,12',14x10x4,stretcher,0,90,1
            W4,0,12',0,0,14x10x4,stretcher,0,90,1
            W5,10',0,10',12',14x10x4,stretcher,0,90,1
            """;

    static final String OPENINGS = """
            mark,wall,kind,offset,width,sill,height,lintel,move,size
            D1,W1,door,4',36,0,81,12 in,±4,0
            N1,W3,window,4',48,36,45,8 in x 12 in,4 in,2 in
            D2,W5,door,3',32,,81,none,,
            """;

    private final Path folder;
    private String walls = WALLS;
    private String openings = OPENINGS;
    private Optional<String> units = Optional.empty();
    private LengthFormat format = LengthFormat.INCHES;

    ScheduleFixture(Path folder) {
        this.folder = folder;
    }

    ScheduleFixture walls(String text) {
        walls = text;
        return this;
    }

    ScheduleFixture wallRow(String row) {
        return walls(WALLS + row + "\n");
    }

    ScheduleFixture openings(String text) {
        openings = text;
        return this;
    }

    ScheduleFixture openingRow(String row) {
        return openings(OPENINGS + row + "\n");
    }

    ScheduleFixture units(String text) {
        units = Optional.of(text);
        return this;
    }

    ScheduleFixture millimetres() {
        format = LengthFormat.MILLIMETRES;
        return this;
    }

    ImportOutcome outcome() {
        ImportSettings settings = new ImportSettings("Two rooms", format, RuleChoice.usual(format.unit()));
        return new ScheduleImport(settings).read(new ScheduleFiles(file("walls.csv", walls),
                file("openings.csv", openings), units.map(text -> file("units.csv", text))));
    }

    Project project() {
        ImportOutcome outcome = outcome();
        assertThat(outcome).isInstanceOf(ImportOutcome.Imported.class);
        return ((ImportOutcome.Imported) outcome).project();
    }

    List<String> warnings() {
        return texts(outcome().warnings());
    }

    List<String> errors() {
        ImportOutcome outcome = outcome();
        assertThat(outcome).isInstanceOf(ImportOutcome.Refused.class);
        return texts(((ImportOutcome.Refused) outcome).errors());
    }

    private List<String> texts(List<Remark> remarks) {
        return remarks.stream().map(remark -> remark.toString().replace(folder.toString() + "/", "")).toList();
    }

    private Path file(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
