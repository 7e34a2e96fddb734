package org.coursewright.core.session;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.Map;

import org.coursewright.model.project.Project;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.xml.sax.InputSource;

/** Builds the model from the text of a project file of the current schema version, wholly or not at all. */
final class ProjectReader {

    private static final Map<String, Object> OPTIONS = Map.of(XMLResource.OPTION_PARSER_FEATURES,
            Map.of("http://apache.org/xml/features/disallow-doctype-decl", Boolean.TRUE));

    private ProjectReader() {
    }

    static Project read(Path file, String text) throws ProjectFileException {
        ProjectResource resource = ProjectResource.inOwnSet(URI.createFileURI(file.toAbsolutePath().toString()));
        try {
            resource.load(new InputSource(new StringReader(text)), OPTIONS);
        } catch (IOException | RuntimeException e) {
            // whatever EMF stumbles over in a damaged file: the reason is in the resource's errors, or this one
            throw LoadFault.of(file, resource, e);
        }
        if (!resource.getErrors().isEmpty() || resource.getContents().size() != 1
                || !(resource.getContents().get(0) instanceof Project)) {
            throw LoadFault.of(file, resource, null);
        }
        return (Project) resource.getContents().get(0);
    }
}
