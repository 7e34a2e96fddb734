package org.coursewright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;

/** Icons are sharp on screens of twice the density. The product's own icon comes in sizes instead. */
class IconsTest {

    private static final Path FOLDER = Path.of("icons");
    private static final String DOUBLE = "@2x.png";

    @Test
    void everyIconHasOneOfTwiceTheSize() throws IOException {
        List<Path> icons = icons();
        assertThat(icons).hasSizeGreaterThan(40);
        for (Path icon : icons) {
            Path twice = icon.resolveSibling(icon.getFileName().toString().replace(".png", DOUBLE));
            assertThat(twice).exists();
            assertThat(ImageIO.read(twice.toFile()).getWidth()).as(twice.toString())
                    .isEqualTo(2 * ImageIO.read(icon.toFile()).getWidth());
        }
    }

    private static List<Path> icons() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.filter(file -> file.toString().endsWith(".png"))
                    .filter(file -> !file.toString().endsWith(DOUBLE))
                    .filter(file -> !file.getFileName().toString().startsWith("product")).toList();
        }
    }
}
