package org.coursewright.core.session;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;

import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.catalogue.CataloguePackage;
import org.coursewright.model.estimate.EstimatePackage;
import org.coursewright.model.programme.ProgrammePackage;
import org.coursewright.model.project.ProjectPackage;
import org.coursewright.model.proposal.ProposalPackage;
import org.coursewright.model.register.RegisterPackage;
import org.coursewright.model.supply.SupplyPackage;
import org.coursewright.model.types.TypesPackage;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.impl.EPackageRegistryImpl;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ExtensibleURIConverterImpl;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.XMLLoad;
import org.eclipse.emf.ecore.xmi.impl.XMILoadImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.xml.sax.helpers.DefaultHandler;

/** Holds one project in memory: knows our packages only, never reads another file, gives every element a UUID. */
final class ProjectResource extends XMIResourceImpl {

    private static final EPackage[] PACKAGES = {TypesPackage.eINSTANCE, ProjectPackage.eINSTANCE,
            CataloguePackage.eINSTANCE, BuildingPackage.eINSTANCE, EstimatePackage.eINSTANCE,
            ProgrammePackage.eINSTANCE, SupplyPackage.eINSTANCE, RegisterPackage.eINSTANCE, ProposalPackage.eINSTANCE};

    private ProjectResource(URI uri) {
        super(uri);
    }

    /** @return an empty resource in a resource set of its own */
    static ProjectResource inOwnSet(URI uri) {
        ResourceSet set = new ResourceSetImpl();
        set.setPackageRegistry(new EPackageRegistryImpl());
        for (EPackage each : PACKAGES) {
            set.getPackageRegistry().put(each.getNsURI(), each);
        }
        set.setURIConverter(new NoOtherFiles());
        ProjectResource resource = new ProjectResource(uri);
        set.getResources().add(resource);
        return resource;
    }

    @Override
    protected boolean useUUIDs() {
        return true;
    }

    @Override
    protected XMLLoad createXMLLoad() {
        return new XMILoadImpl(createXMLHelper()) {
            @Override
            protected DefaultHandler makeDefaultHandler() {
                return new ProjectHandler(resource, helper, options);
            }
        };
    }

    /** A project file stands alone: whatever EMF would fetch for it is refused. */
    private static final class NoOtherFiles extends ExtensibleURIConverterImpl {
        @Override
        public InputStream createInputStream(URI uri, Map<?, ?> options) throws IOException {
            throw new IOException("A project does not read other files: " + uri);
        }
    }
}
