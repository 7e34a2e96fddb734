package org.coursewright.workbench.internal.welcome;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;

import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.URIUtil;

/** The demo that the product brings, as a copy among the settings that one may edit at will. */
final class DemoProject {

    private static final String NAME = "clinic.coursewright";

    private DemoProject() {
    }

    /**
     * @return the copy, made if it is not there yet; what was done to it before is still in it
     * @throws IOException if it cannot be made
     */
    static Path file() throws IOException {
        Path file = folder().resolve(NAME);
        if (!Files.exists(file)) {
            Files.createDirectories(file.getParent());
            URL shipped = FileLocator.find(Platform.getBundle(WorkbenchIds.BUNDLE),
                    IPath.fromPortableString("demo/" + NAME));
            try (InputStream content = shipped.openStream()) {
                Files.copy(content, file);
            }
        }
        return file;
    }

    private static Path folder() throws IOException {
        try {
            return Path.of(URIUtil.toURI(Platform.getInstanceLocation().getURL())).resolve("demo");
        } catch (URISyntaxException e) {
            throw new IOException(e);
        }
    }
}
