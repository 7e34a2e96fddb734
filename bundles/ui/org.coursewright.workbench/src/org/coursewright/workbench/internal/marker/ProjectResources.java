package org.coursewright.workbench.internal.marker;

import java.nio.file.Path;
import java.util.Locale;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;

/**
 * Gives each open project file, wherever it lies, a place in the platform's workspace, because markers need one: a link in
 * one hidden folder of the settings. The files themselves are never touched by it.
 */
public final class ProjectResources {

    private static final String FOLDER = "open-projects";

    private boolean cleared;

    /**
     * @param file project file, which need not be in the workspace
     * @return the resource that stands for it
     * @throws CoreException if the settings cannot be written
     */
    public IFile add(Path file) throws CoreException {
        IFile link = folder().getFile(nameOf(file));
        link.createLink(file.toUri(), IResource.HIDDEN | IResource.REPLACE | IResource.ALLOW_MISSING_LOCAL, null);
        return link;
    }

    /** @param link of a project that was closed */
    public void remove(IFile link) {
        try {
            link.delete(true, null);
        } catch (CoreException e) {
            // a link that stays is cleared away at the next start; nothing refers to it any more
            ILog.of(getClass()).log(e.getStatus());
        }
    }

    /** Two files of the same name in different folders are two resources. */
    private static String nameOf(Path file) {
        return String.format(Locale.ROOT, "%08x-%s", file.hashCode(), file.getFileName());
    }

    /** Links of an earlier start that did not end in order are cleared away. */
    private IProject folder() throws CoreException {
        IProject folder = ResourcesPlugin.getWorkspace().getRoot().getProject(FOLDER);
        if (!cleared && folder.exists()) {
            folder.delete(true, true, null);
        }
        cleared = true;
        if (!folder.exists()) {
            folder.create(ResourcesPlugin.getWorkspace().newProjectDescription(FOLDER), IResource.HIDDEN, null);
        }
        folder.open(null);
        return folder;
    }
}
