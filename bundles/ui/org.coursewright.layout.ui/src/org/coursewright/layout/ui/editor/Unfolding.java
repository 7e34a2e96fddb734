package org.coursewright.layout.ui.editor;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.layout.ui.chain.ChainLink;
import org.coursewright.layout.ui.chain.WallChain;
import org.coursewright.layout.ui.part.WallPart;
import org.coursewright.model.building.Wall;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;

/** The walls round the corners of the one that is shown, once somebody asks for them; a double-click opens one of them. */
final class Unfolding {

    private final Wall wall;
    private final Consumer<Wall> open;
    private boolean shown;
    private List<ChainLink> links = List.of();

    /**
     * @param wall that is shown
     * @param open opens another wall
     */
    Unfolding(Wall wall, Consumer<Wall> open) {
        this.wall = wall;
        this.open = open;
    }

    /** From now on opens walls that are clicked on twice. */
    void follow(GraphicalViewer viewer) {
        viewer.getControl().addListener(SWT.MouseDoubleClick, event -> open(viewer, new Point(event.x, event.y)));
    }

    private void open(GraphicalViewer viewer, Point at) {
        if (viewer.getContents() instanceof WallPart part) {
            part.face().translateToRelative(at);
            part.beside().stream().filter(figure -> figure.getBounds().contains(at)).findFirst()
                    .ifPresent(figure -> open.accept(figure.link().wall()));
        }
    }

    /** Whether walls round the corners are shown. */
    void show(boolean unfolded) {
        shown = unfolded;
    }

    /** Takes note of how the building is laid now, empty if that is not known. */
    void laid(Optional<LayoutOutcome> outcome) {
        links = outcome.filter(laid -> shown).map(laid -> WallChain.of(wall, laid)).orElse(List.of());
    }

    /** The walls that are shown beside the one. */
    List<ChainLink> links() {
        return links;
    }
}
