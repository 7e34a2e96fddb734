package org.coursewright.model.edit;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Which properties each kind of element has, in the order in which they are shown. */
public final class PropertyDescriptors {

    private PropertyDescriptors() {
    }

    /**
     * @param kind a class of the model
     * @return its properties: all it holds but the elements inside it
     */
    public static List<PropertyDescriptor> of(EClass kind) {
        return kind.getEAllStructuralFeatures().stream().filter(PropertyDescriptors::isShown)
                .map(PropertyDescriptors::of).toList();
    }

    /**
     * @param feature of the model, no containment
     * @return how it is shown
     */
    public static PropertyDescriptor of(EStructuralFeature feature) {
        String key = key(feature);
        ValueKind kind = ValueKind.of(feature);
        return new PropertyDescriptor(feature, EditTexts.of("group." + EditTexts.of(key + ".group")),
                labelOf(feature), kind, EditTexts.find(key + ".unit").orElse(""), EditTexts.of(key + ".help"),
                feature.isChangeable() && kind != ValueKind.ELEMENTS);
    }

    /**
     * @param feature of the model
     * @return its name for people
     * @throws IllegalArgumentException if it holds elements and so is no property
     */
    public static String labelOf(EStructuralFeature feature) {
        return EditTexts.find(key(feature) + ".label").orElseThrow(
                () -> new IllegalArgumentException("%s is no property.".formatted(feature.getName())));
    }

    private static boolean isShown(EStructuralFeature feature) {
        return !(feature instanceof EReference reference) || !reference.isContainment();
    }

    private static String key(EStructuralFeature feature) {
        return "property." + feature.getEContainingClass().getName() + "." + feature.getName();
    }
}
