package org.coursewright.estimate.ui.takeoff;

import java.util.List;

import org.coursewright.core.cost.QuantityGroup;
import org.eclipse.jface.viewers.ITreeContentProvider;

/** Groups with their rows. */
final class QuantityContent implements ITreeContentProvider {

    @Override
    public Object[] getElements(Object input) {
        return ((List<?>) input).toArray();
    }

    @Override
    public Object[] getChildren(Object parent) {
        return parent instanceof QuantityGroup group ? group.rows().toArray() : new Object[0];
    }

    @Override
    public Object getParent(Object element) {
        return null;
    }

    @Override
    public boolean hasChildren(Object element) {
        return element instanceof QuantityGroup;
    }
}
