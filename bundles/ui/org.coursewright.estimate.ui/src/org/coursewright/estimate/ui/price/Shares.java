package org.coursewright.estimate.ui.price;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.coursewright.estimate.ui.part.TypedProperty;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.estimate.EstimatePackage;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.EAttribute;

/**
 * What a project's estimate adds to direct cost.
 *
 * @param project that has the estimate
 * @param execute makes an edit, and says why not if it cannot be made
 */
record Shares(Project project, Function<ProjectCommand, Optional<String>> execute) {

    /** In the order in which they are added. */
    static final List<EAttribute> ALL = List.of(EstimatePackage.Literals.ESTIMATE__MATERIAL_TAX_SHARE,
            EstimatePackage.Literals.ESTIMATE__LABOUR_TAX_SHARE, EstimatePackage.Literals.ESTIMATE__PLANT_TAX_SHARE,
            EstimatePackage.Literals.ESTIMATE__HAULAGE_TAX_SHARE, EstimatePackage.Literals.ESTIMATE__OVERHEAD_SHARE,
            EstimatePackage.Literals.ESTIMATE__CONTINGENCY_SHARE);

    /** @return a share of the project's estimate, empty if it has none */
    Optional<TypedProperty> of(EAttribute share) {
        return Optional.ofNullable(project.getEstimate()).map(estimate -> new TypedProperty(estimate, share, execute));
    }
}
