package org.coursewright.layout.ui.plan.part;

import java.util.List;
import java.util.Optional;

import org.coursewright.core.bond.WallHanding;
import org.coursewright.core.finding.Finding;
import org.coursewright.layout.ui.handing.HandingWords;
import org.coursewright.layout.ui.plan.paint.WallPainting;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.model.building.Wall;
import org.coursewright.model.building.WallPlace;
import org.coursewright.model.edit.ElementLabels;
import org.eclipse.gef.EditPolicy;
import org.eclipse.osgi.util.NLS;

/** A wall in plan. */
public final class PlanWallPart extends PlanPart<Wall> {

    /** @param wall to be shown */
    public PlanWallPart(Wall wall) {
        super(wall);
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new WallDragPolicy(this));
        installEditPolicy(EditPolicy.COMPONENT_ROLE, new RemovalPolicy());
    }

    /** @return how it lies, empty if it has no length */
    public Optional<WallShape> shape() {
        return state().shape().wall(element());
    }

    @Override
    protected Optional<WallPainting> painting() {
        return shape().map(shape -> new WallPainting(shape, place(), state().ink(),
                Optional.ofNullable(wording().marks().get(element())),
                PlanTrouble.gravest(findings()), isChosen()));
    }

    @Override
    public String words() {
        String name = ElementLabels.of(element());
        return shape().map(shape -> NLS.bind(PlanPartText.wall, new Object[]{name, format(shape.length()),
                format(shape.module().thickness())})).orElse(name) + corner(WallPlace.START, PlanPartText.cornerAtStart)
                + corner(WallPlace.END, PlanPartText.cornerAtEnd);
    }

    private String corner(WallPlace place, String where) {
        return state().laid().flatMap(laid -> WallHanding.at(laid, element().getMark(), place)).map(HandingWords::of)
                .map(words -> NLS.bind(where, words)).orElse("");
    }

    @Override
    protected List<Finding> findings() {
        return state().trouble().of(element());
    }
}
