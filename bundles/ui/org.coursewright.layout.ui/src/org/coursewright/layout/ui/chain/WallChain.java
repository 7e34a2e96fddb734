package org.coursewright.layout.ui.chain;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Building;
import org.coursewright.model.building.Wall;

/**
 * Goes from a wall round its corners, to the right as far as walls follow, then to the left. The chain is seen from the side
 * from which the wall itself is seen; walls drawn in the other direction are turned.
 */
public final class WallChain {

    /** Between walls, so that the corner can be seen. */
    static final Length FOLD = Length.ofMillimetres(400);

    private final Wall first;
    private final LayoutOutcome laid;
    private final Set<String> seen = new HashSet<>();
    private final List<ChainLink> links = new ArrayList<>();

    private WallChain(Wall first, LayoutOutcome laid) {
        this.first = first;
        this.laid = laid;
        seen.add(first.getMark());
    }

    /**
     * @param wall that is shown
     * @param laid how the building is laid
     * @return the walls beside it, in the order in which they are come by
     */
    public static List<ChainLink> of(Wall wall, LayoutOutcome laid) {
        WallChain chain = new WallChain(wall, laid);
        chain.face(wall.getMark()).ifPresent(face -> {
            chain.follow(face.mark(), face.end(), true, face.length());
            chain.follow(face.mark(), face.start(), false, Length.ZERO);
        });
        return List.copyOf(chain.links);
    }

    private Optional<WallFace> face(String mark) {
        return laid.faces().stream().filter(each -> each.mark().equals(mark)).findFirst();
    }

    private void follow(String mark, WallEnd end, boolean right, Length edge) {
        next(mark, end).ifPresent(face -> {
            seen.add(face.mark());
            boolean asDrawn = meets(right ? face.start() : face.end(), end);
            wall(face.mark()).flatMap(wall -> link(wall, asDrawn, right, edge)).ifPresent(link -> {
                links.add(link);
                follow(face.mark(), right == asDrawn ? face.end() : face.start(), right,
                        right ? link.right() : link.left());
            });
        });
    }

    private Optional<WallFace> next(String mark, WallEnd end) {
        return laid.faces().stream().filter(face -> !face.mark().equals(mark) && !seen.contains(face.mark()))
                .filter(face -> meets(face.start(), end) || meets(face.end(), end)).findFirst();
    }

    private static boolean meets(WallEnd one, WallEnd other) {
        return one instanceof WallEnd.Corner a && other instanceof WallEnd.Corner b && a.meeting().equals(b.meeting());
    }

    private Optional<ChainLink> link(Wall wall, boolean asDrawn, boolean right, Length edge) {
        return FaceDrawing.of(wall, laid).map(drawing -> {
            FaceDrawing seenFromHere = asDrawn ? drawing : MirroredDrawing.of(drawing);
            Length left = right ? edge.plus(FOLD) : edge.minus(FOLD).minus(drawing.face().length());
            return new ChainLink(wall, seenFromHere, left, wall.getBase().minus(first.getBase()));
        });
    }

    private Optional<Wall> wall(String mark) {
        return ((Building) first.eContainer().eContainer()).getStoreys().stream()
                .flatMap(storey -> storey.getWalls().stream()).filter(wall -> mark.equals(wall.getMark())).findFirst();
    }
}
