package org.coursewright.exchange.estimate;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

import org.coursewright.exchange.remark.Place;
import org.coursewright.exchange.remark.Remarks;
import org.coursewright.exchange.table.Rows;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Building;
import org.coursewright.model.catalogue.Catalogue;
import org.coursewright.model.catalogue.CoatingType;
import org.coursewright.model.estimate.Estimate;
import org.coursewright.model.project.Project;

/**
 * A folder of tables that an estimate rests on: {@code materials.csv}, {@code mixes.csv}, {@code crews.csv},
 * {@code plant.csv}, {@code settings.csv}, {@code work.csv}, {@code rates.csv}, {@code beams.csv}, {@code finishes.csv},
 * {@code scenarios.csv}. Each may be missing; what is in one may be named in those after it.
 */
public final class EstimateFolder {

    private final Path folder;
    private final LengthFormat format;

    /**
     * @param folder that holds the tables, not null
     * @param format what a bare length means, not null
     */
    public EstimateFolder(Path folder, LengthFormat format) {
        this.folder = folder;
        this.format = format;
    }

    /**
     * Reads the tables into a project that has walls and unit types, but no estimate yet.
     *
     * @param project that is added to; to be thrown away if anything is wrong
     * @param remarks where everything that is wrong is noted
     */
    public void readInto(Project project, Remarks remarks) {
        if (!Files.isDirectory(folder)) {
            remarks.error(Place.of(folder.toString()), "There is no such folder. Check the name.");
            return;
        }
        Book book = new Book(project, false);
        Catalogue catalogue = project.getCatalogue();
        Building building = project.getBuilding();
        Estimate estimate = book.estimate();
        add("materials.csv", new MaterialTable(book), catalogue.getMaterials(), remarks);
        coatings(catalogue, book);
        add("mixes.csv", new MixTable(book), catalogue.getMixDesigns(), remarks);
        add("crews.csv", new CrewTable(book), catalogue.getCrewTypes(), remarks);
        add("plant.csv", new PlantTable(book), catalogue.getPlant(), remarks);
        read("settings.csv", new SettingTable(book, project), remarks);
        add("work.csv", new WorkTable(book), estimate.getTasks(), remarks);
        add("rates.csv", new RateTable(book, currency(project)), estimate.getRates(), remarks);
        add("beams.csv", new BeamTable(book), building.getGradeBeams(), remarks);
        add("finishes.csv", new FinishTable(book), catalogue.getFinishTypes(), remarks);
        add("scenarios.csv", new ScenarioTable(book), estimate.getScenarios(), remarks);
    }

    static Optional<Currency> currency(Project project) {
        return Optional.ofNullable(project.getCurrency()).flatMap(code -> Currency.getAvailableCurrencies()
                .stream().filter(each -> each.getCurrencyCode().equals(code)).findFirst());
    }

    private <E> void add(String name, Schedule<Made<E>> table, Collection<? super E> to, Remarks remarks) {
        read(name, table, remarks).forEach(made -> to.add(made.element()));
    }

    private <R extends Schedule.Row> List<R> read(String name, Schedule<R> table, Remarks remarks) {
        Path file = folder.resolve(name);
        Rows<R> rows = Files.exists(file) ? table.read(file, format, remarks) : Rows.none();
        return rows.sound();
    }

    private static void coatings(Catalogue catalogue, Book book) {
        catalogue.getMaterials().forEach(material -> {
            Optional<CoatingType> coating = book.coatings().known(material.getMark());
            coating.ifPresent(catalogue.getCoatingTypes()::add);
        });
    }
}
