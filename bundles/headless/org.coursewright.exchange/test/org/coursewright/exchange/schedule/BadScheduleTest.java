package org.coursewright.exchange.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BadScheduleTest {

    @TempDir
    Path folder;

    private ScheduleFixture schedules;

    @BeforeEach
    void setUp() {
        schedules = new ScheduleFixture(folder);
    }

    @Test
    void missingColumnsAreNamed() {
        assertThat(schedules.walls("mark,from_x\nW1,0\n").errors()).singleElement().asString().startsWith(
                "walls.csv, line 1: The header lacks from_y, to_x, to_y, unit, height. Its columns are mark,from_x,");
    }

    @Test
    void columnNamedTwiceIsRefused() {
        assertThat(schedules.walls("mark,from_x,FROM_X,from_y,to_x,to_y,unit,height\n").errors()).containsExactly(
                "walls.csv, line 1, column from_x: The header names this column twice. Keep one of them.");
    }

    @Test
    void everyBadCellIsReportedInOneGo() {
        schedules.wallRow("W6,abc,0,20',0,14x10x4,diagonal,0,-5,1").openingRow("D1,W9,gate,x,0,0,81,none,,");
        assertThat(schedules.errors()).hasSize(8)
                .anySatisfy(starts("walls.csv, line 7, column from_x: \"abc\" is not a length"))
                .anySatisfy(starts(
                        "walls.csv, line 7, column bond: \"diagonal\" is unknown. Enter one of stretcher, header."))
                .anySatisfy(starts("walls.csv, line 7, column height: \"-5\" is out of range: enter more than 0"))
                .anySatisfy(starts("openings.csv, line 5, column kind: \"gate\" is unknown. Enter one of door, window"))
                .anySatisfy(starts("openings.csv, line 5, column offset: \"x\" is not a length"))
                .anySatisfy(starts("openings.csv, line 5, column width: \"0\" is out of range"))
                .anySatisfy(starts("openings.csv, line 5, column mark: \"D1\" is already the mark of line 2."))
                .anySatisfy(starts("openings.csv, line 5, column wall: There is no wall \"W9\"."));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            W6,5,5,5,5,14x10x4,,0,90,1       | walls.csv, line 7, column to_x: The wall begins and ends at the same point
            w1,0,50,20',50,14x10x4,,0,90,1   | walls.csv, line 7, column mark: "w1" is already the mark of line 2.
            W6,0,50,20',50,brick,,0,90,1     | walls.csv, line 7, column unit: There is no unit "brick". Enter one of
            W6,0,,20',50,14x10x4,,0,90,1     | walls.csv, line 7, column from_y: The cell is empty. Enter a length such as
            W6,0,50,20',50,14x10x4,,0,,1     | walls.csv, line 7, column height: The cell is empty.
            W6,0,50,900',50,14x10x4          | walls.csv, line 7, column height: The cell is empty.
            ,0,50,20',50,14x10x4,,0,90,1     | walls.csv, line 7, column mark: The cell is empty. Enter a mark.
            W6,0,50,9999999,50,14x10x4,,,9,1 | walls.csv, line 7, column to_x: "9999999" is
            W6,0,5,1,000,50,14x10x4,,0,90,1  | walls.csv, line 7: The row has 11 cells, the header names 10 columns.
            W6,5',3',15',3',14x10x4,,0,90,1  | walls.csv, line 7: walls W5 and W6: They cross at 10'-0" east, 3'-0" north. Split one of them there
            """)
    void badWallIsToldWithItsPlace(String row, String message) {
        assertThat(schedules.wallRow(row).errors()).singleElement().asString().startsWith(message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            D3,W9,door,1',36,0,81,none,,         | openings.csv, line 5, column wall: There is no wall "W9".
            D3,W1,door,6',36,0,81,none,,         | openings.csv, line 5, column offset: opening D3 in wall W1: It overlaps opening D1. Move one of them.
            D3,W1,door,19',36,0,81,none,,        | openings.csv, line 5, column offset: opening D3 in wall W1: It reaches from 19'-0" to 22'-0", but the wall from 0 to
            N3,W1,window,12',36,60,45,none,,     | openings.csv, line 5, column height: opening N3 in wall W1: It reaches from 5'-0" to 8'-9" above the base, but the wall there from 0 to 7'-6".
            N3,W1,window,12',36,,45,none,,       | openings.csv, line 5, column sill: The cell is empty. Enter the sill's height
            D3,W1,door,-1,36,0,81,none,,         | openings.csv, line 5, column offset: "-1" is out of range
            D3,W1,,12',36,0,81,none,,            | openings.csv, line 5, column kind: The cell is empty. Enter door
            D3,W1,door,12',36,0,81,8 x 8 x 8,,   | openings.csv, line 5, column lintel: "8 x 8 x 8" is no lintel
            D3,W1,door,12',36,0,81,8 x q,,       | openings.csv, line 5, column lintel: "q" is not a length
            D3,W1,door,12',36,0,81,none,±?,      | openings.csv, line 5, column move: "?" is not a length
            """)
    void badOpeningIsToldWithItsPlace(String row, String message) {
        assertThat(schedules.openingRow(row).errors()).singleElement().asString().startsWith(message);
    }

    @Test
    void faultsOfCellsOpeningsAndPlanAreToldInOneGo() {
        schedules.wallRow("W6,5',-5',5',5',14x10x4,stretcher,0,90,1");
        schedules.openings(ScheduleFixture.OPENINGS + """
                D3,W1,door,6',36,0,81,none,,
                D4,W3,hatch,4',36,0,81,none,,
                D5,W5,door,10',36,0,81,none,,
                """);

        assertThat(schedules.errors()).extracting(line -> line.split(":")[0])
                .containsExactlyInAnyOrder("openings.csv, line 6, column kind", "openings.csv, line 5, column offset",
                        "walls.csv, line 7", "openings.csv, line 7, column offset");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            B,14,10,4,heavy,,     | units.csv, line 2, column mass: "heavy" is no mass of a unit
            B,14,10,4,0,,         | units.csv, line 2, column mass: "0" is no mass of a unit
            B,10,14,4,,,          | units.csv, line 2, column width: The unit is wider than it is long.
            B,14,10,4,,14,        | units.csv, line 2, column special_lengths: A special is as long as the whole unit
            B,14,10,4,,6;;x,      | units.csv, line 2, column special_lengths: "x" is not a length
            B,14,10,4,,,15        | units.csv, line 2, column shortest_piece: It is longer than the unit.
            B,14,10,0,,,          | units.csv, line 2, column height: "0" is out of range: enter 20 mm to 2 m.
            """)
    void badUnitIsToldWithItsPlace(String row, String message) {
        schedules.units("mark,length,width,height,mass,special_lengths,shortest_piece\n" + row + "\n");
        assertThat(schedules.errors()).singleElement().asString().startsWith(message);
    }

    @Test
    void wallOfABadUnitIsNotReportedAsWell() {
        schedules.units("mark,length,width,height\n14x10x4,14,ten,4\n");
        assertThat(schedules.errors()).singleElement().asString()
                .startsWith("units.csv, line 2, column width: \"ten\" is not a length");
    }

    @Test
    void wallOfMoreUnitsThanCanBeLaidIsRefused() {
        assertThat(schedules.wallRow("W6,0,100',1500',100',14x10x4,,0,59 m,1").errors()).singleElement().asString()
                .startsWith("walls.csv, line 7: wall W6: ");
    }

    @Test
    void headUnderARakeIsCheckedAtTheLowerJamb() {
        schedules.walls("""
                mark,from_x,from_y,to_x,to_y,unit,height,gable
                G1,0,0,20',0,14x10x4,90,45
                """).openings("""
                mark,wall,kind,offset,width,sill,height
                N1,G1,window,5',120,100,12
                N2,G1,window,4',12,100,12
                """);
        assertThat(schedules.errors()).singleElement().asString().startsWith(
                "openings.csv, line 3, column height: opening N2 in wall G1: It reaches from 8'-4\" to 9'-4\" above the base, but the wall there from 0 to 9'-0\".");
    }

    private static org.assertj.core.api.ThrowingConsumer<String> starts(String prefix) {
        return text -> assertThat(text).startsWith(prefix);
    }
}
