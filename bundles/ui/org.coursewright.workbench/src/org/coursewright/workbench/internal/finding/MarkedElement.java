package org.coursewright.workbench.internal.finding;

import org.coursewright.workbench.finding.FindingMarkers;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.IAdapterFactory;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.PlatformUI;

/** Leads from a finding's marker to the element that it is about, for every part that shows what is selected elsewhere. */
public final class MarkedElement implements IAdapterFactory {

    @Override
    public <T> T getAdapter(Object marker, Class<T> adapter) {
        return PlatformUI.getWorkbench().getService(FindingMarkers.class).elementOf((IMarker) marker)
                .filter(adapter::isInstance).map(adapter::cast).orElse(null);
    }

    @Override
    public Class<?>[] getAdapterList() {
        return new Class<?>[]{EObject.class};
    }
}
