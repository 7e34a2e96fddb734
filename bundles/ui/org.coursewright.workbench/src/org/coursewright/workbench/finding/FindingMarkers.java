package org.coursewright.workbench.finding;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.coursewright.workbench.WorkbenchIds;
import org.coursewright.workbench.internal.marker.MarkedProject;
import org.coursewright.workbench.internal.marker.ProjectResources;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * Keeps what was found in the open projects as markers of the platform, brought up to date after each edit.
 *
 * <p>A part gets it from its site: {@code getSite().getService(FindingMarkers.class)}. To be used in the user interface
 * thread only, except for {@link #gravest}.
 */
public final class FindingMarkers implements OpenProjectsListener {

    private static final Comparator<IMarker> GRAVEST_FIRST = Comparator
            .<IMarker>comparingInt(marker -> -marker.getAttribute(IMarker.SEVERITY, IMarker.SEVERITY_INFO))
            .thenComparingLong(IMarker::getId);

    private final OpenProjects projects;
    private final Executor display = task -> PlatformUI.getWorkbench().getDisplay().asyncExec(task);
    private final ProjectResources resources = new ProjectResources();
    private final List<MarkedProject> marked = new CopyOnWriteArrayList<>();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final IResourceChangeListener markersChanged = this::resourceChanged;

    /** @param projects whose findings are kept */
    public FindingMarkers(OpenProjects projects) {
        this.projects = projects;
        ResourcesPlugin.getWorkspace().addResourceChangeListener(markersChanged, IResourceChangeEvent.POST_CHANGE);
        projects.addListener(this);
        projects.sessions().forEach(this::add);
    }

    /** Ends the keeping of markers; what is there is left to the next start to clear away. */
    public void dispose() {
        projects.removeListener(this);
        ResourcesPlugin.getWorkspace().removeResourceChangeListener(markersChanged);
        marked.forEach(MarkedProject::dispose);
    }

    /** @param listener run each time there may be other findings, or their checking has begun or ended */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** @param listener not to be run any more */
    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    /** @return the findings of all open projects, each project's gravest first */
    public List<IMarker> all() {
        return marked.stream().flatMap(project -> markers(project.resource()).stream()).toList();
    }

    /** @return whether the findings are those of the projects as they are now */
    public boolean areCurrent() {
        return marked.stream().allMatch(MarkedProject::isCurrent);
    }

    /**
     * @param marker a finding
     * @return the project in which it was found, empty if it is not open any more
     */
    public Optional<ProjectSession> sessionOf(IMarker marker) {
        return marked.stream().filter(project -> project.resource().equals(marker.getResource()))
                .map(MarkedProject::session).findFirst();
    }

    /**
     * @param marker a finding
     * @return the element that it is about, the project if it names none or one that is gone, empty if that is not open
     */
    public Optional<EObject> elementOf(IMarker marker) {
        ElementReference reference = new ElementReference("",
                Optional.ofNullable(marker.getAttribute(WorkbenchIds.FINDING_ELEMENT, null)));
        return sessionOf(marker).map(ProjectSession::project)
                .map(project -> reference.in(project).orElse(project));
    }

    /**
     * Safe for use from any thread.
     *
     * @param element part of a project
     * @return the gravest severity, as in {@link IMarker}, of what was found about it or what is in it
     */
    public Optional<Integer> gravest(EObject element) {
        return marked.stream().flatMap(project -> project.gravest(element).stream()).findFirst();
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        if (change == Change.OPENED) {
            add(session);
        } else if (change == Change.CLOSED) {
            marked.stream().filter(project -> project.isOf(session)).forEach(this::remove);
        }
        tell();
    }

    private void remove(MarkedProject project) {
        marked.remove(project);
        project.dispose();
        resources.remove(project.resource());
    }

    private void add(ProjectSession session) {
        try {
            marked.add(new MarkedProject(session, resources.add(session.file()), display, this::tell));
        } catch (CoreException e) {
            StatusManager.getManager().handle(
                    new Status(e.getStatus().getSeverity(), WorkbenchIds.BUNDLE, e.getMessage(), e),
                    StatusManager.LOG | StatusManager.SHOW);
        }
    }

    private static List<IMarker> markers(IResource resource) {
        try {
            return Arrays.stream(resource.findMarkers(WorkbenchIds.FINDING_MARKER, true, IResource.DEPTH_ZERO))
                    .sorted(GRAVEST_FIRST)
                    .toList();
        } catch (CoreException e) {
            throw new IllegalStateException("The resource of an open project is gone: " + resource, e);
        }
    }

    private void resourceChanged(IResourceChangeEvent event) {
        if (event.findMarkerDeltas(WorkbenchIds.FINDING_MARKER, true).length > 0) {
            display.execute(this::tell);
        }
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}
