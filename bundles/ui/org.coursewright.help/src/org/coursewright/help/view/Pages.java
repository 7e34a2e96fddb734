package org.coursewright.help.view;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

import org.coursewright.help.page.PageAddress;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.IPath;
import org.osgi.framework.FrameworkUtil;

/** The pages that the bundle brings. */
final class Pages {

    private static final String FOLDER = "pages/";

    private Pages() {
    }

    /** @return where a page or picture is, empty if there is none */
    static Optional<URL> find(PageAddress address) {
        return Optional.ofNullable(FileLocator.find(FrameworkUtil.getBundle(Pages.class),
                IPath.fromPortableString(FOLDER + address.path())));
    }

    /** @return the text of a page, empty if there is none */
    static Optional<String> text(PageAddress address) {
        return find(address).map(Pages::read);
    }

    private static String read(URL place) {
        try (InputStream content = place.openStream()) {
            return new String(content.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("A page of this bundle cannot be read: " + place, e);
        }
    }
}
