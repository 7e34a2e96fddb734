package org.coursewright.layout.ui.plan.editor;

import java.util.List;
import java.util.Optional;

import org.coursewright.layout.ui.plan.part.DimensionPart;
import org.coursewright.layout.ui.plan.part.PlanPart;
import org.coursewright.layout.ui.plan.part.PlanState;
import org.coursewright.model.building.Storey;
import org.coursewright.model.edit.ElementLabels;
import org.eclipse.osgi.util.NLS;

/**
 * What the header of a plan has to say about what is shown.
 *
 * @param storey that is shown, empty if there is none
 * @param state of the plan
 */
record PlanWords(Optional<Storey> storey, PlanState state) {

    /** About what is selected, or about the storey. */
    String of(List<?> selected) {
        if (selected.size() > 1) {
            return NLS.bind(PlanText.several, selected.size());
        }
        if (selected.size() == 1 && selected.get(0) instanceof PlanPart<?> part) {
            return part.words();
        }
        if (selected.size() == 1 && selected.get(0) instanceof DimensionPart part) {
            return part.words();
        }
        return storey.map(this::summary).orElse(PlanText.noStorey);
    }

    private String summary(Storey shown) {
        int openings = shown.getWalls().stream().mapToInt(wall -> wall.getOpenings().size()).sum();
        return state.shape().bounds()
                .map(box -> NLS.bind(PlanText.summary,
                        new Object[]{ElementLabels.of(shown), shown.getWalls().size(), openings,
                                state.format().format(box.width()), state.format().format(box.depth())}))
                .orElseGet(() -> NLS.bind(PlanText.noWalls, ElementLabels.of(shown)));
    }
}
