package org.coursewright.exchange.estimate;

import java.math.BigDecimal;

import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.CrewMember;
import org.coursewright.model.catalogue.CrewType;

/** Crews and who is in them. */
final class CrewTable extends MarkedTable<CrewType> {

    private static final BigDecimal MOST = BigDecimal.valueOf(1000);

    private final Book book;

    CrewTable(Book book) {
        super(Column.mandatory("members"));
        this.book = book;
    }

    @Override
    CrewType create() {
        return CatalogueFactory.eINSTANCE.createCrewType();
    }

    @Override
    void fill(Cells cells, CrewType crew) {
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
    }
}
