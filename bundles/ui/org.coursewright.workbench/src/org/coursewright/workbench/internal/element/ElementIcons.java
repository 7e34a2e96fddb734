package org.coursewright.workbench.internal.element;

import static java.util.Map.entry;

import java.util.Map;

import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.OpeningKind;
import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.programme.ProgrammePackage;
import org.coursewright.model.project.ProjectPackage;
import org.coursewright.model.proposal.ProposalPackage;
import org.coursewright.model.register.RegisterPackage;
import org.coursewright.model.supply.SupplyPackage;
import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ResourceLocator;

/** The icon of each kind of element. */
public final class ElementIcons {

    private static final Map<EClass, String> NAMES = Map.ofEntries(
            entry(ProjectPackage.Literals.PROJECT, "project"),
            entry(ProjectPackage.Literals.SITE, "site"),
            entry(CataloguePackage.Literals.CATALOGUE, "catalogue"),
            entry(CataloguePackage.Literals.UNIT_TYPE, "unit-type"),
            entry(CataloguePackage.Literals.MIX_DESIGN, "mix-design"),
            entry(CataloguePackage.Literals.MATERIAL, "material"),
            entry(CataloguePackage.Literals.COATING_TYPE, "coating-type"),
            entry(CataloguePackage.Literals.LINTEL_TYPE, "lintel-type"),
            entry(CataloguePackage.Literals.FINISH_TYPE, "finish-type"),
            entry(CataloguePackage.Literals.CREW_TYPE, "crew-type"),
            entry(CataloguePackage.Literals.PLANT, "plant"),
            entry(BuildingPackage.Literals.BOND_RULE, "bond-rule"),
            entry(BuildingPackage.Literals.BUILDING, "building"),
            entry(BuildingPackage.Literals.STOREY, "storey"),
            entry(BuildingPackage.Literals.WALL, "wall"),
            entry(BuildingPackage.Literals.FINISH, "finish"),
            entry(BuildingPackage.Literals.JUNCTION, "junction"),
            entry(BuildingPackage.Literals.GRADE_BEAM, "grade-beam"),
            entry(BuildingPackage.Literals.BOND_BEAM, "bond-beam"),
            entry(ProgrammePackage.Literals.PROGRAMME, "programme"),
            entry(SupplyPackage.Literals.SUPPLY, "supply"),
            entry(RegisterPackage.Literals.REGISTER, "register"),
            entry(ProposalPackage.Literals.PROPOSAL, "proposal"));

    private static final Map<OpeningKind, String> OPENINGS = Map.of(OpeningKind.DOOR, "door", OpeningKind.WINDOW,
            "window");

    private ElementIcons() {
    }

    /**
     * @param element part of a model
     * @return its icon, a plain one if its kind has none of its own
     */
    public static ImageDescriptor of(EObject element) {
        return named(element instanceof Opening opening
                ? OPENINGS.getOrDefault(opening.getKind(), "opening")
                : NAMES.getOrDefault(element.eClass(), "element"));
    }

    /**
     * @param name of a file in the bundle's folder of icons, without its extension
     * @return that icon
     */
    public static ImageDescriptor named(String name) {
        return ResourceLocator.imageDescriptorFromBundle(WorkbenchIds.BUNDLE, "icons/" + name + ".png").orElseThrow();
    }
}
