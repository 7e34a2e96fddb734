package org.coursewright.layout.ui.plan.editor;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.dimension.DimensionChains;
import org.coursewright.layout.ui.plan.paint.Lettering;
import org.coursewright.layout.ui.plan.paint.PlanInk;
import org.coursewright.layout.ui.plan.part.PlanState;
import org.coursewright.layout.ui.plan.part.PlanTrouble;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.layout.ui.plan.shape.WallModule;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;

/** What somebody has chosen to see of a plan, and the state that follows from it; computed anew only after a change. */
final class PlanView {

    private final Project project;
    private final Lettering lettering;
    private Optional<Storey> storey = Optional.empty();
    private Optional<Storey> underlay = Optional.empty();
    private boolean gridShown = true;
    private boolean dimensionsShown = true;
    private PlanPoint corner = PlanPoint.ORIGIN;
    private PlanTrouble trouble = PlanTrouble.NONE;
    private Set<Wall> measured = Set.of();
    private Optional<StoreyShape> shape = Optional.empty();
    private Optional<DimensionChains> chains = Optional.empty();
    private Optional<Set<Wall>> left = Optional.empty();
    private Optional<LayoutOutcome> laid = Optional.empty();
    private Optional<PlanState> state = Optional.empty();

    PlanView(Project project, Lettering lettering) {
        this.project = project;
        this.lettering = lettering;
    }

    Optional<Storey> storey() {
        return storey;
    }

    Optional<Storey> underlay() {
        return underlay;
    }

    void show(Optional<Storey> shown) {
        storey = shown;
        underlay = underlay.filter(under -> shown.filter(under::equals).isEmpty());
        changed();
    }

    void underlay(Optional<Storey> under) {
        underlay = under;
        changed();
    }

    void showGrid(boolean shown) {
        gridShown = shown;
        state = Optional.empty();
    }

    void showDimensions(boolean shown) {
        dimensionsShown = shown;
        state = Optional.empty();
    }

    void corner(PlanPoint shown) {
        corner = shown;
        state = Optional.empty();
    }

    void trouble(PlanTrouble found) {
        trouble = found;
        state = Optional.empty();
    }

    void laid(Optional<LayoutOutcome> outcome) {
        laid = outcome;
        state = Optional.empty();
    }

    /** Shows the dimensions of these walls besides those outside the building; tells whether that changes anything. */
    boolean measure(Set<Wall> walls) {
        if (measured.equals(walls)) {
            return false;
        }
        measured = Set.copyOf(walls);
        state = Optional.empty();
        return true;
    }

    /** How lengths are written at present. */
    LengthFormat format() {
        return ProjectFormat.of(project);
    }

    /** Takes note that the project is another. */
    void changed() {
        shape = Optional.empty();
        chains = Optional.empty();
        left = Optional.empty();
        state = Optional.empty();
    }

    StoreyShape shape() {
        if (shape.isEmpty()) {
            shape = Optional.of(storey.map(each -> StoreyShape.of(each, project)).orElse(StoreyShape.EMPTY));
        }
        return shape.get();
    }

    PlanState state(PlanInk ink) {
        if (state.filter(known -> known.ink().equals(ink)).isEmpty()) {
            List<Dimension> outside = chains().outside();
            state = Optional.of(new PlanState(project, corner, shape(), measuredLeft(), outside,
                    PlanState.byKey(shown(outside)), underlay.map(each -> StoreyShape.of(each, project)), ink,
                    lettering, format(),
                    gridShown ? Optional.of(module().step()) : Optional.empty(), trouble, laid));
        }
        return state.get();
    }

    private DimensionChains chains() {
        if (chains.isEmpty()) {
            chains = Optional.of(new DimensionChains(shape()));
        }
        return chains.get();
    }

    private Set<Wall> measuredLeft() {
        if (left.isEmpty()) {
            left = Optional.of(shape().walls().values().stream().filter(chains()::isLeft).map(WallShape::wall)
                    .collect(Collectors.toUnmodifiableSet()));
        }
        return left.get();
    }

    /** What the grid is stepped by: the module of the first wall. */
    private WallModule module() {
        return shape().walls().values().stream().findFirst().map(wall -> wall.module())
                .orElseGet(() -> WallModule.usual(format().unit()));
    }

    private List<Dimension> shown(List<Dimension> outside) {
        Set<Dimension> shown = new LinkedHashSet<>(dimensionsShown ? outside : List.of());
        measured.forEach(wall -> shown.addAll(chains().of(wall)));
        return new ArrayList<>(shown);
    }
}
