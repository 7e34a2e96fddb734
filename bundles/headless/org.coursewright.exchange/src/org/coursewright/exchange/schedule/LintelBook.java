package org.coursewright.exchange.schedule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.exchange.remark.Remarks;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.LintelType;

/** The lintel types that openings ask for; equal ones are one type. */
final class LintelBook {

    private record Size(String name, Length depth, Length bearing) {
    }

    private final Map<Size, LintelType> types = new LinkedHashMap<>();
    private final LengthFormat format;
    private final Remarks remarks;

    LintelBook(LengthFormat format, Remarks remarks) {
        this.format = format;
        this.remarks = remarks;
    }

    /**
     * Finds or makes the lintel type of an opening.
     *
     * @param opening the opening
     * @param course height of a course of its wall
     * @return the type, or empty if the opening has no lintel
     */
    Optional<LintelType> typeFor(OpeningRow opening, Length course) {
        if (opening.lintel() instanceof LintelCell.Sized sized) {
            return Optional.of(sized(sized.depth().orElse(course), sized.bearing()));
        }
        if (opening.lintel() instanceof LintelCell.Named named) {
            return Optional.of(named(opening, named.mark(), course));
        }
        return Optional.empty();
    }

    /** @return every type made so far, in the order of the openings */
    List<LintelType> types() {
        return new ArrayList<>(types.values());
    }

    private LintelType sized(Length depth, Length bearing) {
        return types.computeIfAbsent(new Size("", depth, bearing), size -> made(
                "%s x %s".formatted(format.formatExact(depth), format.formatExact(bearing)), size));
    }

    private LintelType named(OpeningRow opening, String mark, Length course) {
        Size wanted = new Size(Schedule.key(mark), course, LintelCell.USUAL_BEARING);
        LintelType known = types.get(wanted);
        if (known != null) {
            return known;
        }
        boolean taken = types.keySet().stream().anyMatch(size -> size.name().equals(wanted.name()));
        LintelType type = made(taken ? "%s %s".formatted(mark, format.formatExact(course)) : mark, wanted);
        types.put(wanted, type);
        remarks.warning(opening.place().inColumn("lintel"),
                "No size is given for lintel %s: assumed one course (%s) deep, bearing %s at each end. Have the structural designer confirm it."
                        .formatted(type.getMark(), format.format(course), format.format(wanted.bearing())));
        return type;
    }

    private static LintelType made(String mark, Size size) {
        LintelType type = CatalogueFactory.eINSTANCE.createLintelType();
        type.setMark(mark);
        type.setHeight(size.depth());
        type.setBearing(size.bearing());
        return type;
    }
}
