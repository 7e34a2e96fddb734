package org.coursewright.architecture;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.jar.Manifest;

/** A bundle of the repository: its folder, and what its manifest says. */
record Bundle(Path folder, Manifest manifest) {

    static Bundle read(Path folder) {
        return of(folder, Repository.text(folder.resolve("META-INF/MANIFEST.MF")));
    }

    static Bundle of(Path folder, String manifestText) {
        try {
            return new Bundle(folder, new Manifest(new ByteArrayInputStream(manifestText.getBytes(
                    StandardCharsets.UTF_8))));
        } catch (IOException e) {
            throw new UncheckedIOException("The manifest of " + folder + " cannot be read.", e);
        }
    }

    String name() {
        return header("Bundle-SymbolicName").get(0).name();
    }

    /** The group folder: engines, model, headless, ui, examples or testkit. */
    String layer() {
        return folder.getParent().getFileName().toString();
    }

    /** Whether it is part of the product and written by us, rather than a test or a stand-in for something foreign. */
    boolean isOurs() {
        return !layer().equals("testkit") && !name().endsWith(".tests") && !name().endsWith(".compat");
    }

    List<Clause> requiredBundles() {
        return header("Require-Bundle");
    }

    List<Clause> importedPackages() {
        return header("Import-Package");
    }

    List<Clause> exportedPackages() {
        return header("Export-Package");
    }

    Path classes() {
        return folder.resolve("target/classes");
    }

    /** Hand-written sources; generated ones are in src-gen. */
    List<Path> sources() {
        return Repository.walk(folder.resolve("src"), ".java");
    }

    private List<Clause> header(String name) {
        return Optional.ofNullable(manifest.getMainAttributes().getValue(name)).map(Clause::parse).orElse(List.of());
    }
}
