package org.coursewright.workbench.internal.navigator;

import java.util.List;

import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/**
 * The elements of one kind that an element has, shown as a folder.
 *
 * @param owner whose elements they are
 * @param feature that holds them
 */
public record ElementGroup(EObject owner, EReference feature) implements IAdaptable {

    /** @return the elements, in their order */
    public List<?> members() {
        return (List<?>) owner.eGet(feature);
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter.isInstance(owner) ? adapter.cast(owner) : null;
    }
}
