package org.coursewright.model.edit.command;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.BondRule;
import org.coursewright.model.building.BuildingPackage.Literals;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.DisplayFormat;
import org.coursewright.model.edit.EditTexts;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Marks;
import org.coursewright.model.edit.Refusal;
import org.coursewright.model.project.Marked;
import org.coursewright.model.project.ProjectPackage;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What the values of one element must be together, or beside those of others. */
final class CombinationRules {

    private final EObject owner;
    private final EObject project;
    private final Map<EStructuralFeature, Object> values;

    private CombinationRules(EObject owner, EObject project, Map<EStructuralFeature, Object> values) {
        this.owner = owner;
        this.project = project;
        this.values = values;
    }

    /**
     * @param owner an element of a project
     * @param values that it is to have
     * @return what speaks against them
     */
    static Optional<Refusal> refusal(EObject owner, Map<EStructuralFeature, Object> values) {
        return new CombinationRules(owner, owner, values).refusal();
    }

    /**
     * @param added an element in no project yet
     * @param project an element of the project it is to be added to
     * @return what speaks against it
     */
    static Optional<Refusal> refusalToAdd(EObject added, EObject project) {
        return new CombinationRules(added, project, Map.of(ProjectPackage.Literals.MARKED__MARK, markOf(added)))
                .refusal();
    }

    private static Object markOf(EObject element) {
        return element instanceof Marked marked && marked.getMark() != null ? marked.getMark() : "";
    }

    private Optional<Refusal> refusal() {
        if (owner instanceof Marked marked && values.containsKey(ProjectPackage.Literals.MARKED__MARK)) {
            Optional<Refusal> refusal = Marks.refusal(marked, project,
                    (String) values.get(ProjectPackage.Literals.MARKED__MARK));
            if (refusal.isPresent()) {
                return refusal;
            }
        }
        if (owner instanceof BondRule) {
            return order("head", Literals.BOND_RULE__HEAD_LEAST, Literals.BOND_RULE__HEAD_NOMINAL,
                    Literals.BOND_RULE__HEAD_MOST).or(
                            () -> order("bed", Literals.BOND_RULE__BED_LEAST, Literals.BOND_RULE__BED_NOMINAL,
                                    Literals.BOND_RULE__BED_MOST));
        }
        return owner instanceof Wall wall && hasNoLength()
                ? Optional.of(Refusal.of("zeroLength", ElementLabels.of(wall)))
                : Optional.empty();
    }

    private boolean hasNoLength() {
        return Objects.equals(after(Literals.WALL__FROM_X), after(Literals.WALL__TO_X))
                && Objects.equals(after(Literals.WALL__FROM_Y), after(Literals.WALL__TO_Y));
    }

    private Optional<Refusal> order(String joints, EAttribute least, EAttribute nominal, EAttribute most) {
        Length[] rising = Stream.of(least, nominal, most).map(this::after).filter(Length.class::isInstance)
                .map(Length.class::cast).toArray(Length[]::new);
        for (int i = 1; i < rising.length; i++) {
            if (rising[i].isLessThan(rising[i - 1])) {
                return Optional.of(Refusal.of("order", EditTexts.of("joints." + joints), shown(least), shown(nominal),
                        shown(most)));
            }
        }
        return Optional.empty();
    }

    private String shown(EAttribute attribute) {
        LengthFormat format = DisplayFormat.of(project);
        Object value = after(attribute);
        return value == null ? EditTexts.of("value.none") : format.formatExact((Length) value);
    }

    private Object after(EStructuralFeature feature) {
        return values.containsKey(feature) ? values.get(feature) : owner.eGet(feature);
    }
}
