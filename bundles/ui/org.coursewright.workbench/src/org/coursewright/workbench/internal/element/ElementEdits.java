package org.coursewright.workbench.internal.element;

import java.util.Optional;

import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.NameProjectCommand;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.edit.command.RemoveOpeningCommand;
import org.coursewright.model.edit.command.RemoveStoreyCommand;
import org.coursewright.model.edit.command.RemoveWallCommand;
import org.coursewright.model.edit.command.RenameCommand;
import org.coursewright.model.edit.command.SetFeatureCommand;
import org.coursewright.model.project.Marked;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectPackage;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Which command of the model makes the edit that somebody asks a view for. */
public final class ElementEdits {

    private ElementEdits() {
    }

    /**
     * @param element of a project
     * @return whether it goes by a mark or a name that can be changed
     */
    public static boolean canRename(Object element) {
        return element instanceof Marked || element instanceof Project;
    }

    /**
     * @param element one that {@link #canRename} accepts
     * @return its mark or name, empty if it has none yet
     */
    public static String name(Object element) {
        String name = element instanceof Project project ? project.getName() : ((Marked) element).getMark();
        return name == null ? "" : name;
    }

    /**
     * @param element one that {@link #canRename} accepts
     * @param name its new mark or name
     * @return the edit
     */
    public static ProjectCommand rename(Object element, String name) {
        return element instanceof Project project
                ? new NameProjectCommand(project, name)
                : new RenameCommand((Marked) element, name);
    }

    /**
     * @param element of a project
     * @param feature of the element
     * @param value to be given to it, null for none
     * @return the edit
     */
    public static ProjectCommand set(EObject element, EStructuralFeature feature, Object value) {
        boolean names = feature == ProjectPackage.Literals.MARKED__MARK
                || feature == ProjectPackage.Literals.PROJECT__NAME;
        return names && value != null
                ? rename(element, value.toString())
                : new SetFeatureCommand(element, feature, value);
    }

    /**
     * @param element of a project
     * @return the edit that takes it out, empty if elements of its kind stay
     */
    public static Optional<ProjectCommand> remove(Object element) {
        if (element instanceof Wall wall) {
            return Optional.of(new RemoveWallCommand(wall));
        }
        if (element instanceof Opening opening) {
            return Optional.of(new RemoveOpeningCommand(opening));
        }
        return element instanceof Storey storey ? Optional.of(new RemoveStoreyCommand(storey)) : Optional.empty();
    }
}
