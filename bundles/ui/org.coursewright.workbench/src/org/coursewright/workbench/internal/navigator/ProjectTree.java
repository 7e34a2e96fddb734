package org.coursewright.workbench.internal.navigator;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectPackage;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.viewers.ITreeContentProvider;

/**
 * The order in which a project is shown: what stands alone by itself, the building down to its openings without
 * folders between, and everything else that comes in numbers in a folder of its own.
 */
public class ProjectTree implements ITreeContentProvider {

    private static final List<EStructuralFeature> PARTS_OF_PROJECT = List.of(ProjectPackage.Literals.PROJECT__SITE,
            ProjectPackage.Literals.PROJECT__CATALOGUE, ProjectPackage.Literals.PROJECT__BUILDING,
            ProjectPackage.Literals.PROJECT__BOND_RULE, ProjectPackage.Literals.PROJECT__ESTIMATE,
            ProjectPackage.Literals.PROJECT__PROGRAMME,
            ProjectPackage.Literals.PROJECT__SUPPLY, ProjectPackage.Literals.PROJECT__REGISTER,
            ProjectPackage.Literals.PROJECT__PROPOSALS);

    private static final Set<EReference> WITHOUT_FOLDER = Set.of(BuildingPackage.Literals.BUILDING__STOREYS,
            BuildingPackage.Literals.STOREY__WALLS, BuildingPackage.Literals.WALL__OPENINGS);

    private final OpenProjects projects;

    /** @param projects whose elements are shown */
    public ProjectTree(OpenProjects projects) {
        this.projects = projects;
    }

    @Override
    public Object[] getElements(Object input) {
        return projects.sessions().stream().map(ProjectSession::project).toArray();
    }

    @Override
    public Object[] getChildren(Object parent) {
        return childrenOf(parent).toArray();
    }

    @Override
    public boolean hasChildren(Object parent) {
        return childrenOf(parent).findAny().isPresent();
    }

    @Override
    public Object getParent(Object child) {
        if (child instanceof ElementGroup group) {
            return group.owner();
        }
        EObject element = (EObject) child;
        EReference holder = element.eContainmentFeature();
        return holder == null || !inFolder(holder)
                ? element.eContainer()
                : new ElementGroup(element.eContainer(), holder);
    }

    private static Stream<?> childrenOf(Object parent) {
        if (parent instanceof ElementGroup group) {
            return group.members().stream();
        }
        EObject owner = (EObject) parent;
        return parts(owner).flatMap(feature -> childrenIn(owner, feature));
    }

    private static Stream<EReference> parts(EObject owner) {
        Stream<? extends EStructuralFeature> features = owner instanceof Project
                ? PARTS_OF_PROJECT.stream()
                : owner.eClass().getEAllContainments().stream();
        return features.map(EReference.class::cast);
    }

    private static Stream<?> childrenIn(EObject owner, EReference feature) {
        if (!owner.eIsSet(feature)) {
            return Stream.empty();
        }
        if (inFolder(feature)) {
            return Stream.of(new ElementGroup(owner, feature));
        }
        Object value = owner.eGet(feature);
        return value instanceof List<?> list ? list.stream() : Stream.of(value);
    }

    private static boolean inFolder(EReference feature) {
        return feature.isMany() && !WITHOUT_FOLDER.contains(feature);
    }
}
