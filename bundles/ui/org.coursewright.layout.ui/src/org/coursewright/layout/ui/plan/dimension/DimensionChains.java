package org.coursewright.layout.ui.plan.dimension;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.layout.ui.plan.dimension.Dimension.Kind;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;

/**
 * The dimension strings of a storey: outside every wall that faces the open, from face to jamb and jamb to jamb, then
 * over all.
 */
public final class DimensionChains {

    private final StoreyShape storey;
    private final OpenSide open;
    private final Map<Wall, Optional<Boolean>> openOnLeft = new HashMap<>();

    /** @param storey how its walls lie */
    public DimensionChains(StoreyShape storey) {
        this.storey = storey;
        this.open = new OpenSide(storey);
    }

    private Optional<Boolean> isOpenOnLeft(WallShape wall) {
        return openOnLeft.computeIfAbsent(wall.wall(), each -> open.of(wall));
    }

    /** @return the dimensions outside the building, wall by wall */
    public List<Dimension> outside() {
        List<Dimension> found = new ArrayList<>();
        storey.walls().values().forEach(
                wall -> isOpenOnLeft(wall).ifPresent(left -> found.addAll(of(new WallSide(wall, left)))));
        return found;
    }

    /**
     * @param wall of the storey
     * @return the dimensions of this wall: on its open side, else on the side into which fewer walls run
     */
    public List<Dimension> of(Wall wall) {
        return storey.wall(wall).map(shape -> of(new WallSide(shape, isLeft(shape)))).orElse(List.of());
    }

    /**
     * @param wall of the storey
     * @return whether its dimensions are on its left
     */
    public boolean isLeft(WallShape wall) {
        return isOpenOnLeft(wall).orElseGet(() -> isLeftPlainer(wall));
    }

    private boolean isLeftPlainer(WallShape wall) {
        return new WallSide(wall, true).stretches(storey).size() < new WallSide(wall, false).stretches(storey).size();
    }

    private List<Dimension> of(WallSide side) {
        List<Dimension> chain = new ArrayList<>();
        side.stretches(storey).forEach(stretch -> chain.addAll(along(side, stretch)));
        if (!side.isPlain(storey)) {
            return chain;
        }
        List<Dimension> withOverall = new ArrayList<>(chain.size() == 1 ? List.of() : chain);
        withOverall.add(new Dimension(side.wall().wall(), Kind.OVERALL, Optional.empty(), Optional.empty(),
                side.at(Length.ZERO), side.at(side.wall().length()), side.away(), chain.size() == 1 ? 0 : 1));
        return withOverall;
    }

    private static List<Dimension> along(WallSide side, WallSide.Stretch stretch) {
        List<Dimension> found = new ArrayList<>();
        Length at = stretch.from();
        Optional<Opening> last = Optional.empty();
        for (Opening opening : inOrder(side, stretch)) {
            Length end = opening.getOffset().plus(opening.getWidth());
            if (opening.getOffset().isLessThan(at)) {
                continue;
            }
            if (opening.getOffset().isGreaterThan(at)) {
                found.add(between(side, Kind.TO_JAMB, Optional.of(opening), at, opening.getOffset()));
            }
            found.add(between(side, Kind.WIDTH, Optional.of(opening), opening.getOffset(), end));
            at = end;
            last = Optional.of(opening);
        }
        if (stretch.to().isGreaterThan(at)) {
            found.add(new Dimension(side.wall().wall(), last.isPresent() ? Kind.FROM_JAMB : Kind.CLEAR, last,
                    last.isPresent() ? Optional.empty() : stretch.far(), side.at(at), side.at(stretch.to()),
                    side.away(),
                    0));
        }
        return found;
    }

    private static List<Opening> inOrder(WallSide side, WallSide.Stretch stretch) {
        return side.wall().wall().getOpenings().stream()
                .filter(opening -> opening.getWidth().signum() > 0)
                .filter(opening -> !opening.getOffset().isLessThan(stretch.from())
                        && !opening.getOffset().plus(opening.getWidth()).isGreaterThan(stretch.to()))
                .sorted(Comparator.comparing(Opening::getOffset)).toList();
    }

    private static Dimension between(WallSide side, Kind kind, Optional<Opening> opening, Length from, Length to) {
        return new Dimension(side.wall().wall(), kind, opening, Optional.empty(), side.at(from), side.at(to),
                side.away(), 0);
    }
}
