package org.coursewright.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The source repository this test was built in. */
record Repository(Path root) {

    /** Found upwards from the working directory, which surefire sets to the folder of the module. */
    static Repository here() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve("bundles")) || !Files.isDirectory(folder.resolve("releng"))) {
            folder = folder.getParent();
            if (folder == null) {
                throw new IllegalStateException("Run this test from inside the repository, not from " + Path.of("")
                        .toAbsolutePath());
            }
        }
        return new Repository(folder);
    }

    /** Every bundle with a manifest, tests and fragments too, by name. */
    List<Bundle> bundles() {
        return folders("bundles", 2).filter(folder -> Files.exists(folder.resolve("META-INF/MANIFEST.MF")))
                .map(Bundle::read).toList();
    }

    /** The bundles that are written by hand for the product: no tests, no compatibility fragments. */
    List<Bundle> productBundles() {
        return bundles().stream().filter(Bundle::isOurs).toList();
    }

    /** Every folder that must be a module of the build: bundles, test modules and features, relative to the root. */
    List<Path> moduleFolders() {
        return Stream.concat(folders("bundles", 2), folders("features", 1))
                .filter(folder -> Files.exists(folder.resolve("pom.xml"))
                        || Files.exists(folder.resolve("META-INF/MANIFEST.MF")))
                .map(root::relativize).toList();
    }

    List<Path> features() {
        return folders("features", 1).map(folder -> folder.resolve("feature.xml")).filter(Files::exists).toList();
    }

    /** All files below the bundles whose name ends so, build output left out. */
    List<Path> filesEnding(String ending) {
        return walk(root.resolve("bundles"), ending);
    }

    static List<Path> walk(Path folder, String ending) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .filter(file -> !folder.relativize(file).toString().matches("(.*/)?target/.*")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Stream<Path> folders(String group, int depth) {
        try (Stream<Path> folders = Files.walk(root.resolve(group), depth)) {
            return folders.filter(Files::isDirectory)
                    .filter(folder -> root.resolve(group).relativize(folder).getNameCount() == depth)
                    .filter(folder -> !folder.equals(root.resolve(group))).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
