package org.coursewright.exchange.estimate;

import java.math.BigDecimal;
import java.util.List;

import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.CrewMember;
import org.coursewright.model.catalogue.CrewType;

/** Crews and who is in them. */
final class CrewTable extends Schedule<Made<CrewType>> {

    private static final BigDecimal MOST = BigDecimal.valueOf(1000);

    private final Book book;

    CrewTable(Book book) {
        super(List.of(Column.mandatory("mark"), Column.mandatory("members")));
        this.book = book;
    }

    @Override
    protected Made<CrewType> row(Cells cells) {
        CrewType crew = CatalogueFactory.eINSTANCE.createCrewType();
        crew.setMark(cells.mark("mark"));
        for (Parts part : Parts.of(cells, "members")) {
            if (part.number().stripTrailingZeros().scale() > 0 || part.number().compareTo(MOST) > 0) {
                cells.wrong("members", "%s of %s: enter a whole number of people.".formatted(part.number(), part
                        .name()));
            } else {
                CrewMember member = CatalogueFactory.eINSTANCE.createCrewMember();
                member.setTrade(part.name());
                member.setCount(part.number().intValueExact());
                crew.getMembers().add(member);
            }
        }
        book.crews().add(crew);
        return new Made<>(cells.line(), crew.getMark(), crew);
    }
}
