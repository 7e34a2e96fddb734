package org.coursewright.exchange.estimate;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.coursewright.exchange.remark.Shown;
import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.model.building.Bond;
import org.coursewright.model.catalogue.UnitSource;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.Scenario;
import org.coursewright.model.estimate.SpecialChoice;
import org.coursewright.model.estimate.UnitChoice;
import org.coursewright.model.estimate.WallChoice;

/**
 * Scenarios by their changes, which bars separate: {@code W2 W3: stretcher}, {@code W1: header B14}, {@code B14: bought} or
 * {@code specials: cut}.
 */
final class ScenarioTable extends Schedule<Made<Scenario>> {

    private final Book book;

    ScenarioTable(Book book) {
        super(List.of(Column.mandatory("mark"), Column.mandatory("changes"), Column.optional("note")));
        this.book = book;
    }

    @Override
    protected Made<Scenario> row(Cells cells) {
        Scenario scenario = EstimateFactory.eINSTANCE.createScenario();
        scenario.setMark(cells.mark("mark"));
        if (!cells.text("note").isEmpty()) {
            scenario.setNote(cells.text("note"));
        }
        Parts.split(cells.text("changes")).forEach(change -> change(cells, change, scenario));
        return new Made<>(cells.line(), scenario.getMark(), scenario);
    }

    private void change(Cells cells, String change, Scenario scenario) {
        int colon = change.indexOf(':');
        String of = colon < 0 ? "" : change.substring(0, colon).strip();
        String value = change.substring(colon + 1).strip().toLowerCase(Locale.ROOT);
        List<String> words = BeamTable.words(change.substring(colon + 1));
        if (of.equals("specials") && value.equals("cut")) {
            scenario.setSpecials(SpecialChoice.CUT);
        } else if (source(value).isPresent() && !of.isEmpty()) {
            book.units().find(cells, "changes", of).ifPresent(unit -> {
                UnitChoice choice = EstimateFactory.eINSTANCE.createUnitChoice();
                choice.setUnitType(unit);
                choice.setSource(source(value).get());
                scenario.getUnitChoices().add(choice);
            });
        } else if (!words.isEmpty() && bond(words.get(0)).isPresent() && words.size() <= 2 && !of.isEmpty()) {
            scenario.getWallChoices().add(walls(cells, of, words));
        } else {
            cells.wrong("changes", "%s is no change: enter such as W2 W3: stretcher, B14: bought or specials: cut."
                    .formatted(Shown.quoted(change)));
        }
    }

    private WallChoice walls(Cells cells, String of, List<String> words) {
        WallChoice choice = EstimateFactory.eINSTANCE.createWallChoice();
        BeamTable.words(of).forEach(mark -> book.walls().find(cells, "changes", mark).ifPresent(choice
                .getWalls()::add));
        choice.setBond(bond(words.get(0)).orElseThrow());
        if (words.size() == 2) {
            book.units().find(cells, "changes", words.get(1)).ifPresent(choice::setUnitType);
        }
        return choice;
    }

    private static Optional<Bond> bond(String word) {
        return Arrays.stream(Bond.values()).filter(each -> each.getLiteral().equals(word.toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    private static Optional<UnitSource> source(String word) {
        return Arrays.stream(UnitSource.values()).filter(each -> each.getLiteral().equals(word)).findFirst();
    }
}
