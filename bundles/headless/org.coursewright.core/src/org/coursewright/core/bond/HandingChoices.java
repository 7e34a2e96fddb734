package org.coursewright.core.bond;

import java.util.List;
import java.util.Optional;

import org.coursewright.model.building.Building;
import org.coursewright.model.building.Junction;
import org.coursewright.model.building.TeeTie;
import org.coursewright.model.building.Wall;

/** What somebody decided about places where walls meet, found by the walls that meet there. */
record HandingChoices(List<Junction> junctions) {

    static HandingChoices of(Optional<Building> building) {
        return new HandingChoices(building.map(found -> List.copyOf(found.getJunctions())).orElse(List.of()));
    }

    /** @return mark of the wall chosen to run through in odd courses where these walls meet, if one of them was chosen */
    Optional<String> throughOnOdd(List<Wall> walls) {
        return choice(walls).map(Junction::getThrough).filter(walls::contains).map(Wall::getMark);
    }

    /** @return whether a wall that ends against another is to be bonded into it; tied unless somebody chose otherwise */
    boolean isBonded(Wall stem, Wall bar) {
        return choice(List.of(stem, bar)).map(Junction::getTie).filter(TeeTie.BONDED::equals).isPresent();
    }

    private Optional<Junction> choice(List<Wall> walls) {
        return junctions.stream().filter(
                junction -> junction.getEnds().stream().map(end -> end.getWall()).toList().containsAll(walls))
                .findFirst();
    }
}
