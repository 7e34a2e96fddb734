package org.coursewright.workbench.internal.navigator;

import java.util.ResourceBundle;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.project.Project;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.internal.element.ElementIcons;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider.IStyledLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.swt.graphics.Image;

/** Icon and text of everything in the navigator. */
public final class ProjectTreeLabels extends LabelProvider implements IStyledLabelProvider {

    private static final ResourceBundle GROUPS = ResourceBundle.getBundle(
            ProjectTreeLabels.class.getPackageName() + ".groups");
    private static final String UNSAVED = "*";

    private final OpenProjects projects;
    private final ResourceManager images;

    /**
     * @param projects whose elements are shown
     * @param images makes the icons
     */
    public ProjectTreeLabels(OpenProjects projects, ResourceManager images) {
        this.projects = projects;
        this.images = new LocalResourceManager(images);
    }

    @Override
    public StyledString getStyledText(Object element) {
        if (element instanceof ElementGroup group) {
            return faint(groupName(group), Integer.toString(group.members().size()));
        }
        if (element instanceof Project project) {
            return projectText(project);
        }
        return new StyledString(ElementLabels.of((EObject) element));
    }

    private StyledString projectText(Project project) {
        String name = ElementLabels.of(project);
        return projects.sessionOf(project).map(session -> faint(mark(session) + name, fileName(session)))
                .orElseGet(() -> new StyledString(name));
    }

    private static String mark(ProjectSession session) {
        return session.isDirty() ? UNSAVED : "";
    }

    private static String fileName(ProjectSession session) {
        return session.file().getFileName().toString();
    }

    private static StyledString faint(String text, String addition) {
        return new StyledString(text).append("  " + addition, StyledString.QUALIFIER_STYLER);
    }

    private static String groupName(ElementGroup group) {
        String feature = group.feature().getName();
        return GROUPS.containsKey(feature) ? GROUPS.getString(feature) : feature;
    }

    @Override
    public String getText(Object element) {
        return getStyledText(element).getString();
    }

    @Override
    public Image getImage(Object element) {
        return images.create(icon(element));
    }

    private static ImageDescriptor icon(Object element) {
        return element instanceof EObject object ? ElementIcons.of(object) : ElementIcons.named("group");
    }

    @Override
    public void dispose() {
        images.dispose();
        super.dispose();
    }
}
