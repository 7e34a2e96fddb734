package org.coursewright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Two rooms with three openings as a builder would type them, in a folder of their own. */
record Schedules(Path folder) {

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

    static Schedules twoRooms(Path folder) throws IOException {
        Schedules schedules = new Schedules(folder);
        schedules.write("walls.csv", WALLS);
        schedules.write("openings.csv", OPENINGS);
        return schedules;
    }

    Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    Path file(String name) {
        return folder.resolve(name);
    }

    CommandRun make(Object... more) {
        Object[] args = {"new", file("rooms"), "--walls", file("walls.csv"), "--openings", file("openings.csv")};
        return CommandRun.of(java.util.stream.Stream.concat(java.util.stream.Stream.of(args),
                java.util.stream.Stream.of(more)).toArray());
    }

    Path project() {
        return file("rooms.coursewright");
    }
}
