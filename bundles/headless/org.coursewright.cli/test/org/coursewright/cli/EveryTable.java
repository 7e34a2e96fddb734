package org.coursewright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A small project of which every table that can be imported says something, in a folder of its own. */
record EveryTable(Schedules schedules) {

    static final List<String> SCHEDULES = List.of("walls", "openings", "units");

    private static final String WALLS = """
            mark,from_x,from_y,to_x,to_y,unit,bond,base,height,storey,gable
            W1,0,0,7'-2 1/2",0,U,stretcher,0,18,1,
            W2,0,50,52,50,14x10x4,header,0,9,1,
            W3,0,1270 mm,0,3 m,U,stretcher,0,114.3 mm,1,
            """;
    private static final String OPENINGS = """
            mark,wall,kind,offset,width,sill,height,lintel,move,size
            D1,W1,door,28.5,29.5,0,13 1/2,14,±4,0
            N1,W3,niche,14 in,6 3/4 in,0,4.5,none,4 in,2 in
            """;
    private static final String UNITS = """
            mark,length,width,height,mass,special_lengths,shortest_piece
            U,14,10,4,30 lb,6 3/4 | 10,3
            """;
    private static final Map<String, String> ESTIMATE = Map.of(
            "settings", "setting,value\ncurrency,USD\nmortar,M\nmix U,S\nsource U,made-on-site\nelement W1,C1010\n",
            "materials", "mark,unit,density,binder,pack,coverage\nsoil,MTQ,1200,no,,\ncement,BG,1506,yes,94 LBR,8\n",
            "mixes",
            "mark,basis,parts,water,dry_density\nM,volume,cement 1 | soil 4,20 %,\nS,mass,soil 15 | cement 1,9 %,1850\n",
            "crews", "mark,members\nC,mason 2 | tender 3\n", "plant", "mark,kind,output,lost\nsaw,saw,30 H87,10 %\n",
            "work",
            "work,crew,plant,output,learning,repetition,heights\nlay,C,,30 H87,0.9,100,0 0.7 | 4 ft 0.9\ncut,C,saw,9 H87,,,\n",
            "rates",
            "resource,kind,price,currency,unit,as_of,low,high,moves_with\nsoil,material,4,USD,MTQ,2026-10-01,0.9,1.2,fuel\n"
                    + "mason,labour,30,USD,HUR,,,,\nU 6 3/4 in,material,1.10,USD,H87,2026-09-01,,,\n",
            "beams", "mark,walls,width,depth,bar,lines,stock,lap\nG1,W1 W2,16 in,12 in,#4,2,20 ft,24 in\n",
            "finishes", "mark,thickness,walls\nF,1/2 in,W1\n",
            "scenarios", "mark,changes\nS,W1: header | U: bought | specials: cut\n");

    static EveryTable in(Path folder) throws IOException {
        EveryTable tables = new EveryTable(new Schedules(folder));
        tables.schedules.write("walls.csv", WALLS);
        tables.schedules.write("openings.csv", OPENINGS);
        tables.schedules.write("units.csv", UNITS);
        Files.createDirectory(tables.estimate());
        for (String name : estimateTables()) {
            Files.writeString(tables.estimateTable(name), estimateText(name));
        }
        return tables;
    }

    static List<String> estimateTables() {
        return ESTIMATE.keySet().stream().sorted().toList();
    }

    static String estimateText(String name) {
        return ESTIMATE.get(name);
    }

    Path project() {
        return schedules.project();
    }

    Path schedule(String name) {
        return schedules.file(name + ".csv");
    }

    Path estimateTable(String name) {
        return estimate().resolve(name + ".csv");
    }

    private Path estimate() {
        return schedules.file("estimate");
    }

    CommandRun make() {
        return make("walls", schedule("walls"));
    }

    /** Makes a project of the tables, one of the schedules from another file. */
    CommandRun make(String instead, Path file) {
        List<Object> args = new ArrayList<>(
                List.of("new", project(), "--format", "json", "--estimate", estimate()));
        for (String name : SCHEDULES) {
            args.addAll(List.of("--" + name, name.equals(instead) ? file : schedule(name)));
        }
        return CommandRun.of(args.toArray());
    }
}
