package org.coursewright.core.session;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;

import org.coursewright.measure.Length;
import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;
import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Makes a project in which every feature of every kind of element has a value that is not its default. */
final class FullProject {

    private final List<EObject> made = new ArrayList<>();
    private int count;

    Project make() {
        Project project = ProjectFactory.eINSTANCE.createProject();
        fill(project);
        made.forEach(this::refer);
        return project;
    }

    private void fill(EObject element) {
        made.add(element);
        element.eClass().getEAllAttributes().forEach(attribute -> setAttribute(element, attribute));
        element.eClass().getEAllContainments().forEach(containment -> addChildren(element, containment));
    }

    private void setAttribute(EObject element, EAttribute attribute) {
        element.eSet(attribute, attribute.isMany() ? List.of(value(attribute), value(attribute)) : value(attribute));
    }

    private Object value(EAttribute attribute) {
        count++;
        Class<?> type = attribute.getEType().getInstanceClass();
        if (type.isEnum()) {
            return type.getEnumConstants()[type.getEnumConstants().length - 1];
        }
        Map<Class<?>, Object> values = Map.of(String.class, "text " + count, Length.class, Length.ofUnits(127L * count),
                int.class, 1000 + count, BigDecimal.class, new BigDecimal("0.5").add(BigDecimal.valueOf(count)),
                boolean.class, true, LocalDate.class, LocalDate.of(2026, 3, 1).plusDays(count), LocalTime.class,
                LocalTime.of(7, 30), Instant.class, Instant.ofEpochSecond(count), Money.class,
                Money.fromStored(count + ".25 USD"), Quantity.class, Quantity.fromStored(count + ".5 MTQ"));
        return values.get(type);
    }

    private void addChildren(EObject element, EReference containment) {
        EClass type = containment.getEReferenceType();
        List<EClass> kinds = type.isAbstract()
                ? List.of(BuildingPackage.Literals.GAUGE_PIN, BuildingPackage.Literals.PIECE_PIN)
                : List.of(type);
        List<EObject> children = kinds.stream().map(EcoreUtil::create).toList();
        element.eSet(containment, containment.isMany() ? children : children.get(0));
        children.forEach(this::fill);
    }

    private void refer(EObject element) {
        for (EReference reference : element.eClass().getEAllReferences()) {
            if (!reference.isContainment()) {
                Collection<EObject> targets = made.stream().filter(reference.getEReferenceType()::isInstance).toList();
                element.eSet(reference, reference.isMany() ? targets : targets.iterator().next());
            }
        }
    }
}
