package org.coursewright.help.page;

import java.net.URI;
import java.util.Optional;

/**
 * Where a page or a picture is among the pages.
 *
 * @param path from the folder of all pages, such as {@code guide/README.md}
 */
public record PageAddress(String path) {

    /** Where help begins. */
    public static final PageAddress HOME = new PageAddress("guide/README.md");

    /**
     * @param target of a link on this page
     * @return the page or picture that it leads to, empty if it leads outside or only within this page
     */
    public Optional<PageAddress> follow(String target) {
        String page = target.replaceFirst("#.*", "");
        if (page.isEmpty() || page.contains(":")) {
            return Optional.empty();
        }
        String resolved = URI.create(path).resolve(page).normalize().getPath();
        return resolved.startsWith("..") ? Optional.empty() : Optional.of(new PageAddress(resolved));
    }
}
