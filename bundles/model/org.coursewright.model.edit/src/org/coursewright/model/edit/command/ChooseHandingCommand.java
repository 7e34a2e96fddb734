package org.coursewright.model.edit.command;

import java.util.List;
import java.util.Optional;

import org.coursewright.model.building.Building;
import org.coursewright.model.building.Junction;
import org.coursewright.model.building.JunctionEnd;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Refusal;
import org.eclipse.emf.ecore.EObject;

/** Chooses which wall runs through on the odd courses of a junction, or leaves it to the layout. */
public final class ChooseHandingCommand extends ProjectCommand {

    private static final int FEWEST_ENDS = 2;

    private final Building building;
    private final Junction junction;
    private final Optional<Wall> through;

    /**
     * @param building of a project
     * @param junction of that building, or a new one for a meeting where nothing was chosen yet; it is added then
     * @param through one of the walls that meet there, or empty to let the layout choose
     */
    public ChooseHandingCommand(Building building, Junction junction, Optional<Wall> through) {
        super(building, ElementLabels.of(junction));
        this.building = building;
        this.junction = junction;
        this.through = through;
    }

    @Override
    protected Optional<Refusal> findRefusal() {
        List<Wall> meeting = junction.getEnds().stream().map(JunctionEnd::getWall).toList();
        if (meeting.size() < FEWEST_ENDS) {
            return Optional.of(Refusal.of("tooFewEnds"));
        }
        if (!meeting.stream().allMatch(wall -> wall != null && isInProject(wall))) {
            return Optional.of(Refusal.of("elsewhere", ElementLabels.of(junction)));
        }
        return through.filter(wall -> !meeting.contains(wall))
                .map(wall -> Refusal.of("notAtJunction", ElementLabels.of(wall), ElementLabels.of(junction)));
    }

    @Override
    protected boolean changesAnything() {
        return through.orElse(null) != junction.getThrough();
    }

    @Override
    protected void apply() {
        if (junction.eContainer() == null) {
            building.getJunctions().add(junction);
        }
        junction.setThrough(through.orElse(null));
    }

    @Override
    protected List<EObject> affected() {
        return List.of(isInProject(junction) ? junction : building);
    }
}
