package org.coursewright.workbench.internal.element;

import java.util.Optional;

import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;

/** The icon of each kind of element. */
public final class ElementIcons {

    private ElementIcons() {
    }

    /**
     * @param element part of a model
     * @return its icon, a plain one if its kind has none of its own
     */
    public static ImageDescriptor of(EObject element) {
        return find(ElementLabels.iconKey(element))
                .orElseGet(() -> named(element instanceof Opening ? "opening" : "element"));
    }

    /**
     * @param name of a file in the bundle's folder of icons, without its extension
     * @return that icon
     */
    public static ImageDescriptor named(String name) {
        return find(name).orElseThrow();
    }

    private static Optional<ImageDescriptor> find(String name) {
        return ResourceLocator.imageDescriptorFromBundle(WorkbenchIds.BUNDLE, "icons/" + name + ".png");
    }
}
