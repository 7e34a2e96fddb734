import java.io.File;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceFactoryImpl;

/** Generates the Java code of a model without an IDE. Arguments: project name, project folder, genmodel file. */
public final class EmfGen {
    private EmfGen() {
    }

    public static void main(String[] args) throws Exception {
        File project = new File(args[1]).getCanonicalFile();
        File genModelFile = new File(args[2]).getCanonicalFile();
        ResourceSet resources = new ResourceSetImpl();
        resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put("ecore", new EcoreResourceFactoryImpl());
        resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put("genmodel", new XMIResourceFactoryImpl());
        GenModelPackage.eINSTANCE.eClass();
        resources.getURIConverter().getURIMap().putAll(EcorePlugin.computePlatformURIMap(false));
        EcorePlugin.getPlatformResourceMap().put(args[0], URI.createFileURI(project.getPath() + "/"));
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(GenModelPackage.eNS_URI,
                GenModelGeneratorAdapterFactory.DESCRIPTOR);
        GenModel model = (GenModel) resources.getResource(URI.createFileURI(genModelFile.getPath()), true).getContents()
                .get(0);
        model.reconcile();
        model.setCanGenerate(true);
        model.setValidateModel(true);
        Diagnostic diagnosis = model.diagnose();
        print(diagnosis, "");
        if (diagnosis.getSeverity() == Diagnostic.ERROR) {
            System.exit(3);
        }
        Generator generator = new Generator();
        generator.setInput(model);
        Diagnostic outcome = generator.generate(model, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, new BasicMonitor());
        print(outcome, "");
        System.exit(outcome.getSeverity() == Diagnostic.ERROR ? 1 : 0);
    }

    private static void print(Diagnostic diagnostic, String indent) {
        if (diagnostic.getSeverity() == Diagnostic.OK) {
            return;
        }
        System.err.println(indent + diagnostic.getMessage());
        if (diagnostic.getException() != null) {
            diagnostic.getException().printStackTrace();
        }
        diagnostic.getChildren().forEach(child -> print(child, indent + "  "));
    }
}
