package org.coursewright.model.edit.command;

import java.util.List;
import java.util.Optional;

import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Refusal;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Puts a new list of rates in the place of all rates of a project, as a price list that was read does. */
public final class ReplaceRatesCommand extends ProjectCommand {

    private final Project project;
    private final List<Rate> rates;

    /**
     * @param project whose rates are replaced
     * @param rates new ones, in no project yet; what they move with may be of the project
     */
    public ReplaceRatesCommand(Project project, List<Rate> rates) {
        super(project, rates.size());
        this.project = project;
        this.rates = List.copyOf(rates);
    }

    @Override
    protected Optional<Refusal> findRefusal() {
        return rates.stream().filter(rate -> rate.eContainer() != null || rate.eResource() != null).findFirst()
                .map(rate -> Refusal.of("present", ElementLabels.of(rate)))
                .or(() -> rates.stream().filter(this::movesElsewhere).findFirst()
                        .map(rate -> Refusal.of("elsewhere", ElementLabels.of(rate.getMovesWith()))));
    }

    private boolean movesElsewhere(Rate rate) {
        return rate.getMovesWith() != null && !isInProject(rate.getMovesWith());
    }

    @Override
    protected boolean changesAnything() {
        List<Rate> old = project.getEstimate() == null ? List.of() : project.getEstimate().getRates();
        if (old.size() != rates.size()) {
            return true;
        }
        for (int i = 0; i < rates.size(); i++) {
            if (!EcoreUtil.equals(old.get(i), rates.get(i))) {
                return true;
            }
        }
        return false;
    }

    @Override
    protected void apply() {
        List<Rate> kept = EstimateOf.project(project).getRates();
        kept.clear();
        kept.addAll(rates);
    }

    @Override
    protected List<? extends EObject> affected() {
        return rates;
    }
}
