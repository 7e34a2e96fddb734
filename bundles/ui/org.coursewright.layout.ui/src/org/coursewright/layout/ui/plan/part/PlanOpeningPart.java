package org.coursewright.layout.ui.plan.part;

import java.util.List;
import java.util.Optional;

import org.coursewright.core.finding.Finding;
import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.layout.ui.plan.change.OpeningShift;
import org.coursewright.layout.ui.plan.paint.OpeningPainting;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.ElementLabels;
import org.eclipse.gef.EditPolicy;
import org.eclipse.osgi.util.NLS;

/** An opening in plan. */
public final class PlanOpeningPart extends PlanPart<Opening> {

    /** @param opening to be shown */
    public PlanOpeningPart(Opening opening) {
        super(opening);
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new OpeningDragPolicy(this));
        installEditPolicy(EditPolicy.COMPONENT_ROLE, new RemovalPolicy());
    }

    /** @return how its wall lies, empty if that has no length */
    public Optional<WallShape> wall() {
        return element().eContainer() instanceof Wall wall ? state().shape().wall(wall) : Optional.empty();
    }

    /**
     * @param wall that it is in
     * @param fine step instead of the module, empty for the module
     * @return a drag that begins where the opening is
     */
    public OpeningShift shift(WallShape wall, Optional<LengthStep> fine) {
        return new OpeningShift(wall, new OpeningShift.Jambs(element().getOffset(), element().getWidth()), fine);
    }

    @Override
    protected Optional<OpeningPainting> painting() {
        return wall().map(wall -> new OpeningPainting(wall, element().getOffset(), element().getWidth(),
                element().getKind(), Optional.ofNullable(wording().marks().get(element())), state().isInsideLeft(wall),
                place(), state().ink(), PlanTrouble.gravest(findings()), isChosen()));
    }

    @Override
    public String words() {
        return NLS.bind(PlanPartText.opening, new Object[]{ElementLabels.of(element()), format(element().getWidth()),
                format(element().getHeight()), format(element().getOffset())});
    }

    @Override
    protected List<Finding> findings() {
        return state().trouble().of(element());
    }
}
