package org.coursewright.exchange.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.coursewright.exchange.remark.Remark;
import org.coursewright.exchange.remark.Remarks;
import org.coursewright.exchange.schedule.ImportOutcome;
import org.coursewright.exchange.schedule.ImportSettings;
import org.coursewright.exchange.schedule.RuleChoice;
import org.coursewright.exchange.schedule.ScheduleFiles;
import org.coursewright.exchange.schedule.ScheduleImport;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.Money;
import org.coursewright.model.building.Bond;
import org.coursewright.model.catalogue.UnitSource;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.estimate.SpecialChoice;
import org.coursewright.model.estimate.Task;
import org.coursewright.model.project.Project;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EstimateFolderTest {

    private static final String RATE_HEADER = "resource,kind,price,currency,unit,as_of,low,high,moves_with\n";

    @TempDir
    Path folder;

    private final Remarks remarks = new Remarks();
    private Project project;

    @BeforeEach
    void planOneWall() throws IOException {
        write("walls.csv", "mark,from_x,from_y,to_x,to_y,unit,height\nW1,0,0,20',0,U,90\nW2,0,50',20',50',U,90\n");
        write("openings.csv", "mark,wall,kind,offset,width,sill,height\n");
        write("units.csv", "mark,length,width,height,special_lengths\nU,14,10,4,6 3/4\n");
        project = ((ImportOutcome.Imported) read(folder.resolve("walls.csv"), Optional.empty())).project();
    }

    private ImportOutcome read(Path walls, Optional<Path> estimate) {
        ImportSettings settings = new ImportSettings("P", LengthFormat.INCHES, RuleChoice.usual(DisplayUnit.INCH));
        return new ScheduleImport(settings).read(new ScheduleFiles(walls, folder.resolve("openings.csv"),
                Optional.of(folder.resolve("units.csv")), estimate));
    }

    @Test
    void ratesAreReadWithUnitDateAndRange() throws IOException {
        write("rates.csv", RATE_HEADER + "cement,material,15.50,USD,BG,2026-10-15,0.9,1.2,fuel\n"
                + "U 6 3/4 in,material,1.10,USD,H87,,,,\n");
        readAll();
        assertThat(messages()).isEmpty();
        Rate cement = project.getEstimate().getRates().get(0);
        assertThat(cement.getPrice()).isEqualTo(Money.fromStored("15.50 USD"));
        assertThat(cement.getUnitCode()).isEqualTo("BG");
        assertThat(cement.getAsOf()).hasToString("2026-10-15");
        assertThat(cement.getMovesWith()).isSameAs(project.getEstimate().getUncertainties().get(0));
        assertThat(project.getEstimate().getRates().get(1).getMark()).isEqualTo("U 171.45 mm");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "cement,material,-1,USD,BG,,,, | line 2, column price: -1 is negative",
            "cement,material,,USD,BG,,,, | line 2, column price: The cell is empty",
            "cement,material,abc,USD,BG,,,, | column price: \"abc\" is no price",
            "cement,material,1,USD,XYZ,,,, | line 2, column unit: \"XYZ\" is no unit code",
            "cement,material,1,ZZZ,BG,,,, | column currency: \"ZZZ\" is no ISO 4217 code",
            "cement,material,1,EUR,BG,,,, | column currency: The project is in USD: convert the price of EUR.",
            "cement,gift,1,USD,BG,,,, | column kind: \"gift\" is unknown",
            "cement,material,1,USD,BG,31.3.26,,, | column as_of: \"31.3.26\" is no date",
            "cement,material,1,USD,BG,,1.1,, | column low: It is the least",
            ",material,1,USD,BG,,,, | column resource: The cell is empty"})
    void badRateIsToldWithItsLine(String row, String told) throws IOException {
        write("settings.csv", "setting,value\ncurrency,USD\n");
        write("rates.csv", RATE_HEADER + row + "\n");
        readAll();
        assertThat(messages()).anySatisfy(message -> assertThat(message).contains("rates.csv, ", told));
    }

    @Test
    void resourceWithTwoRatesIsTold() throws IOException {
        write("rates.csv", RATE_HEADER + "sand,material,1,USD,MTQ,,,,\nSand,material,2,USD,MTQ,,,,\n");
        readAll();
        assertThat(messages()).singleElement().asString()
                .contains("line 3, column resource: \"Sand\" is already the mark");
    }

    @Test
    void tablesNameWhatIsInThoseBeforeThem() throws IOException {
        write("materials.csv", "mark,unit,density,binder,pack\nsoil,MTQ,1200,no,\ncement,BG,1506,yes,94 LBR\n");
        write("mixes.csv", "mark,parts,basis,stabiliser\nblocks,soil 15 | cement 1,mass,6 %\n");
        write("crews.csv", "mark,members\nmasons,mason 2 | tender 3\n");
        write("plant.csv", "mark,kind,output\nsaw,saw,30 H87\n");
        write("settings.csv", "setting,value\nmortar,blocks\nbreakage U,4 %\nsource U,made-on-site\nmix U,blocks\n"
                + "element W1,C1010\ncorrelation labour,0.8\noverhead,12 %\n");
        write("work.csv", "work,crew,plant,output,heights\nlay,masons,,30 H87,0 0.7 | 5 ft 0.9\ncut,,saw,,\n");
        write("scenarios.csv", "mark,changes\nS,W1 W2: header | U: bought | specials: cut\n");
        readAll();
        assertThat(messages()).isEmpty();
        assertThat(project.getEstimate().getMortar().getParts()).hasSize(2);
        assertThat(project.getCatalogue().getUnitTypes().get(0).getSource()).isEqualTo(UnitSource.MADE_ON_SITE);
        assertThat(project.getBuilding().getStoreys().get(0).getWalls().get(0).getElement()).isEqualTo("C1010");
        assertThat(project.getEstimate().getOverheadShare()).isEqualByComparingTo("0.12");
        Task lay = project.getEstimate().getTasks().get(0);
        assertThat(lay.getBands().get(1).getFrom()).isEqualTo(Length.ofInches(60));
        Scenario scenario = project.getEstimate().getScenarios().get(0);
        assertThat(scenario.getWallChoices().get(0).getWalls()).hasSize(2);
        assertThat(scenario.getWallChoices().get(0).getBond()).isEqualTo(Bond.HEADER);
        assertThat(scenario.getSpecials()).isEqualTo(SpecialChoice.CUT);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"mixes.csv;mark,parts;M,gold 1;There is no material \"gold\"",
            "mixes.csv;mark,parts;M,sand;\"sand\" cannot be used: enter a name and a number above 0",
            "crews.csv;mark,members;C,mason 1.5;enter a whole number of people",
            "settings.csv;setting,value;colour,red;\"colour\" is no setting",
            "settings.csv;setting,value;overhead,120 %;enter a share from 0 to 1",
            "scenarios.csv;mark,changes;S,W1: sideways;is no change",
            "scenarios.csv;mark,changes;S,W9: header;There is no wall \"W9\"",
            "work.csv;work,output;dance,1 H87;\"dance\" is unknown",
            "work.csv;work,output;lay,30;\"30\" is no quantity",
            "beams.csv;mark,walls,width,depth;G1,W9,16 in,12 in;There is no wall \"W9\"",
            "finishes.csv;mark,thickness,walls;F,0,W1;out of range",
            "plant.csv;mark,kind;P,kettle;\"kettle\" is unknown"})
    void badRowIsToldWithFileAndLine(String file, String header, String row, String told) throws IOException {
        write(file, header + "\n" + row + "\n");
        readAll();
        assertThat(messages()).anySatisfy(message -> assertThat(message).contains(file + ", line 2", told));
    }

    @Test
    void planIsRefusedIfItsEstimateIs() throws IOException {
        write("rates.csv", RATE_HEADER + "cement,material,-1,USD,BG,,,,\n");
        ImportOutcome outcome = read(folder.resolve("walls.csv"), Optional.of(folder));
        assertThat(outcome).isInstanceOf(ImportOutcome.Refused.class);
    }

    @Test
    void priceListLeavesTheProjectAsItIs() throws IOException {
        Path list = write("list.csv", RATE_HEADER + "sand,material,38,USD,MTQ,,,,\n");
        List<Rate> rates = new RateFile(list, LengthFormat.INCHES).read(project, remarks);
        assertThat(messages()).isEmpty();
        assertThat(rates).singleElement().satisfies(rate -> assertThat(rate.getMark()).isEqualTo("sand"));
        assertThat(project.getEstimate()).isNull();
    }

    @Test
    void priceListMayNotMoveWithWhatTheProjectLacks() throws IOException {
        Path list = write("list.csv", RATE_HEADER + "sand,material,38,USD,MTQ,,,,weather\n");
        new RateFile(list, LengthFormat.INCHES).read(project, remarks);
        assertThat(messages()).singleElement().asString().contains("There is no uncertainty \"weather\"");
    }

    private void readAll() {
        new EstimateFolder(folder, LengthFormat.INCHES).readInto(project, remarks);
    }

    private List<String> messages() {
        return remarks.errors().stream().map(Remark::toString).toList();
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
