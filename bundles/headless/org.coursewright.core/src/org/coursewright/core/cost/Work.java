package org.coursewright.core.cost;

import java.util.Locale;

import org.coursewright.measure.UnitCode;
import org.coursewright.model.estimate.WorkKind;

/** What is worked or bought for, with the trade that it belongs to unless a rate says otherwise. */
public enum Work {

    /** Masonry units themselves. */
    UNITS("masonry", UnitCode.PIECE),
    /** What mortar is mixed of. */
    MORTAR("masonry", UnitCode.CUBIC_METRE),
    /** Laying units. */
    LAY("masonry", UnitCode.PIECE),
    /** Cutting pieces. */
    CUT("masonry", UnitCode.PIECE),
    /** Pressing blocks, with all that they are made of. */
    PRESS("block making", UnitCode.PIECE),
    /** Mixing mortar. */
    MIX("masonry", UnitCode.CUBIC_METRE),
    /** Plaster. */
    PLASTER("plaster", UnitCode.SQUARE_METRE),
    /** Sealing grade beams. */
    SEAL("waterproofing", UnitCode.SQUARE_METRE),
    /** Lintels. */
    SET_LINTEL("masonry", UnitCode.PIECE),
    /** Grade beams and bond beams. */
    CAST_BEAM("concrete", UnitCode.CUBIC_METRE),
    /** Scaffold. */
    SCAFFOLD("scaffold", UnitCode.SQUARE_METRE),
    /** Ties between walls. */
    TIES("masonry", UnitCode.PIECE),
    /** Bringing things to the site. */
    HAULAGE("haulage", UnitCode.KILOGRAM);

    private final String trade;
    private final UnitCode unit;

    Work(String trade, UnitCode unit) {
        this.trade = trade;
        this.unit = unit;
    }

    static Work of(WorkKind kind) {
        return valueOf(kind.name());
    }

    /** @return such as {@code set lintel} */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** @return trade it is charged to unless the rate names another */
    public String trade() {
        return trade;
    }

    /** @return what its amount is counted in */
    UnitCode unit() {
        return unit;
    }
}
