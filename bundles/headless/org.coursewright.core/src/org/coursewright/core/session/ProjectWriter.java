package org.coursewright.core.session;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;

import org.coursewright.model.project.Project;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.XMLResource;

/** Writes a project as XML: one element a line, attributes in the order of the schema, UTF-8, line feeds. */
final class ProjectWriter {

    private static final Map<String, Object> OPTIONS = Map.of(XMLResource.OPTION_ENCODING, "UTF-8",
            Resource.OPTION_LINE_DELIMITER, "\n");

    private ProjectWriter() {
    }

    /**
     * @param project to write; it is put into a resource of its own if it is in none
     * @param file for messages and for a new resource
     * @return the content of its file
     * @throws ProjectFileException if it refers to elements outside or holds text that XML cannot
     */
    static byte[] write(Project project, Path file) throws ProjectFileException {
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
        try {
            resourceOf(project, file).save(out, OPTIONS);
        } catch (IOException | RuntimeException e) {
            // EMF tells characters that XML cannot hold by a RuntimeException, dangling references by an IOException
            throw new ProjectFileException(file, "the project cannot be written: it refers to an element that is no "
                    + "longer in it, or a text holds a control character. Undo the last changes and save again.", e);
        }
        return out.toByteArray();
    }

    private static Resource resourceOf(Project project, Path file) {
        if (project.eResource() == null) {
            ProjectResource.inOwnSet(URI.createFileURI(file.toAbsolutePath().toString())).getContents().add(project);
        }
        return project.eResource();
    }
}
