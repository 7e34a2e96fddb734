package org.coursewright.workbench.internal.marker;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.stream.Stream;

import org.coursewright.core.check.CheckReport;
import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.derive.DerivationGraph.Listening;
import org.coursewright.core.derive.NodeState;
import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.finding.Finding;
import org.coursewright.core.finding.Severity;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** The findings of one project, computed in the background after each edit and kept as markers on its resource. */
public final class MarkedProject {

    private static final String NOT_CHECKED = "project.not-checked";

    private final ProjectSession session;
    private final IFile resource;
    private final Runnable changed;
    private final DerivationGraph results;
    private final Map<Finding, IMarker> markers = new LinkedHashMap<>();
    private volatile Map<EObject, Integer> gravest = Map.of();
    private Optional<Listening> listening = Optional.empty();
    private boolean closed;

    /**
     * @param session of the project
     * @param resource to mark
     * @param display runs what is told in the user interface thread
     * @param changed run there each time the findings have been computed
     */
    public MarkedProject(ProjectSession session, IFile resource, Executor display, Runnable changed) {
        this.session = session;
        this.resource = resource;
        this.changed = changed;
        results = session.derived();
        display.execute(() -> listen(display));
    }

    /** Checking begins when the window is done with showing the project, for both want the processor. */
    private void listen(Executor display) {
        if (!closed) {
            listening = Optional.of(results.listen(ProjectResults.CHECK, display, this::settled));
        }
    }

    /** @return the project */
    public ProjectSession session() {
        return session;
    }

    /** @return whether it is the project of that session */
    public boolean isOf(ProjectSession other) {
        return session == other;
    }

    /** @return what is marked */
    public IFile resource() {
        return resource;
    }

    /** @return whether the findings are those of the project as it is now */
    public boolean isCurrent() {
        return !(results.state(ProjectResults.CHECK) instanceof NodeState.Stale);
    }

    /**
     * Safe for use from any thread.
     *
     * @return the gravest severity of what was found about an element or what is in it, as in {@link IMarker}
     */
    public Optional<Integer> gravest(EObject element) {
        return Optional.ofNullable(gravest.get(element));
    }

    /** Ends the listening; what is already on its way is ignored. */
    public void dispose() {
        closed = true;
        listening.ifPresent(Listening::end);
    }

    private void settled(NodeState<CheckReport> state) {
        if (closed) {
            return;
        }
        List<Finding> found = findings(state).toList();
        gravest = gravest(found);
        try {
            ResourcesPlugin.getWorkspace().run(monitor -> mark(found), null, IWorkspace.AVOID_UPDATE, null);
        } catch (CoreException e) {
            throw new IllegalStateException("What was found in %s cannot be marked.".formatted(session.file()), e);
        }
        changed.run();
    }

    private Stream<Finding> findings(NodeState<CheckReport> state) {
        if (state instanceof NodeState.Failed<CheckReport> failed) {
            String message = NLS.bind(MarkerText.notChecked, failed.reason());
            return Stream.of(new Finding(Severity.ERROR, NOT_CHECKED,
                    ElementReference.of(session.project(), MarkerText.project), message));
        }
        return state.value().stream().flatMap(report -> report.findings().stream());
    }

    private Map<EObject, Integer> gravest(List<Finding> found) {
        Map<EObject, Integer> worst = new HashMap<>();
        for (Finding finding : found) {
            int severity = severityOf(finding);
            for (EObject each = finding.element().in(session.project()).orElse(null); each != null; each = each
                    .eContainer()) {
                worst.merge(each, severity, Math::max);
            }
        }
        return Map.copyOf(worst);
    }

    /** Leaves the markers of what was found before as they are, so that what is selected stays selected. */
    private void mark(List<Finding> found) throws CoreException {
        Set<Finding> gone = new HashSet<>(markers.keySet());
        found.forEach(gone::remove);
        for (Finding finding : gone) {
            markers.remove(finding).delete();
        }
        for (Finding finding : found) {
            if (!markers.containsKey(finding)) {
                markers.put(finding, resource.createMarker(WorkbenchIds.FINDING_MARKER, attributes(finding)));
            }
        }
    }

    private static Map<String, Object> attributes(Finding finding) {
        Map<String, Object> attributes = new HashMap<>();
        attributes.put(IMarker.SEVERITY, severityOf(finding));
        attributes.put(IMarker.LOCATION, finding.element().name());
        attributes.put(IMarker.MESSAGE, finding.message());
        attributes.put(WorkbenchIds.FINDING_CODE, finding.code());
        finding.element().id().ifPresent(id -> attributes.put(WorkbenchIds.FINDING_ELEMENT, id));
        return attributes;
    }

    private static int severityOf(Finding finding) {
        return switch (finding.severity()) {
            case INVALID, ERROR -> IMarker.SEVERITY_ERROR;
            case WARNING -> IMarker.SEVERITY_WARNING;
            case NOTE -> IMarker.SEVERITY_INFO;
        };
    }
}
