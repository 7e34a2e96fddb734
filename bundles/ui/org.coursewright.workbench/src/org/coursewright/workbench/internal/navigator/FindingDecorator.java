package org.coursewright.workbench.internal.navigator;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.workbench.finding.FindingMarkers;
import org.coursewright.workbench.internal.element.ElementIcons;
import org.eclipse.core.resources.IMarker;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.IDecoration;
import org.eclipse.jface.viewers.ILightweightLabelDecorator;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.LabelProviderChangedEvent;
import org.eclipse.ui.PlatformUI;

/** Puts a small sign on elements in which, or in whose parts, something is wrong or doubtful; notes get none. */
public final class FindingDecorator extends LabelProvider implements ILightweightLabelDecorator {

    private final FindingMarkers markers = PlatformUI.getWorkbench().getService(FindingMarkers.class);
    private final Runnable refresh = () -> fireLabelProviderChanged(new LabelProviderChangedEvent(this));

    /** Called by the platform. */
    public FindingDecorator() {
        markers.addListener(refresh);
    }

    @Override
    public void dispose() {
        markers.removeListener(refresh);
        super.dispose();
    }

    @Override
    public void decorate(Object element, IDecoration decoration) {
        elements(element).flatMap(each -> markers.gravest(each).stream()).max(Comparator.naturalOrder())
                .flatMap(FindingDecorator::icon)
                .ifPresent(icon -> decoration.addOverlay(ElementIcons.named(icon), IDecoration.BOTTOM_LEFT));
    }

    private static Stream<EObject> elements(Object element) {
        return element instanceof ElementGroup group
                ? group.members().stream().map(EObject.class::cast)
                : Stream.of((EObject) element);
    }

    private static Optional<String> icon(int severity) {
        return switch (severity) {
            case IMarker.SEVERITY_ERROR -> Optional.of("overlay-error");
            case IMarker.SEVERITY_WARNING -> Optional.of("overlay-warning");
            default -> Optional.empty();
        };
    }
}
