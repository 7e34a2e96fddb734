package org.coursewright.layout.ui.plan.action;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.layout.ui.plan.change.Alignment;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.command.AlignOpeningsCommand;
import org.coursewright.model.edit.command.AlignWallsCommand;
import org.coursewright.model.edit.command.WallPosition;
import org.eclipse.ui.IWorkbenchPart;

/** Brings the selected walls, or the selected openings, into line with the one that was selected last. */
public final class AlignAction extends PlanAction {

    private static final int FEWEST = 2;

    private final Alignment.Side side;

    /**
     * @param editor of the plan
     * @param selected what is selected
     * @param side by which things are aligned
     */
    public AlignAction(IWorkbenchPart editor, PlanSelection selected, Alignment.Side side) {
        super(editor, selected, id(side), text(side));
        this.side = side;
    }

    /**
     * @param side by which things are aligned
     * @return under which the action is registered
     */
    public static String id(Alignment.Side side) {
        return "org.coursewright.layout.ui.plan.align." + side.name();
    }

    private static String text(Alignment.Side side) {
        return switch (side) {
            case LOWER -> ActionText.alignLower;
            case CENTRE -> ActionText.alignCentre;
            case UPPER -> ActionText.alignUpper;
        };
    }

    @Override
    protected boolean calculateEnabled() {
        return selected().walls().size() >= FEWEST || selected().openings().size() >= FEWEST;
    }

    @Override
    public void run() {
        Alignment alignment = new Alignment(selected().state().shape(), side);
        List<WallShape> walls = selected().walls();
        if (walls.size() >= FEWEST) {
            List<WallShape> others = walls.subList(0, walls.size() - 1);
            List<WallPosition> positions = alignment.walls(walls.get(walls.size() - 1), others).positions();
            if (!positions.isEmpty()) {
                selected().execute(new AlignWallsCommand(positions, Math.min(others.size(), positions.size())));
            }
        } else {
            align(alignment, new LinkedHashMap<>(selected().openings()));
        }
    }

    private void align(Alignment alignment, Map<Opening, WallShape> openings) {
        Opening model = List.copyOf(openings.keySet()).get(openings.size() - 1);
        WallShape wall = openings.remove(model);
        Map<Opening, Length> offsets = alignment.openings(model, wall, openings);
        if (!offsets.isEmpty()) {
            selected().execute(new AlignOpeningsCommand(offsets));
        }
    }
}
