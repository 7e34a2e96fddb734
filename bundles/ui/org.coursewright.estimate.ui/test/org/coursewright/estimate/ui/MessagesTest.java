package org.coursewright.estimate.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

/** Every text that is asked for is in a properties file, and none is there that nobody asks for. */
class MessagesTest {

    private static final Path SOURCES = Path.of("src");

    @Test
    void textsAndPropertiesAgree() throws Exception {
        List<Path> files = files();
        assertThat(files).hasSizeGreaterThan(5);
        for (Path file : files) {
            assertThat(fieldsBeside(file)).as(file.toString()).containsExactlyInAnyOrderElementsOf(keysOf(file));
        }
    }

    private static Set<String> keysOf(Path file) throws IOException {
        Properties messages = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            messages.load(reader);
        }
        return messages.stringPropertyNames();
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(SOURCES)) {
            return all.filter(file -> file.endsWith("messages.properties")).toList();
        }
    }

    private static List<String> fieldsBeside(Path messages) throws Exception {
        List<String> fields = new ArrayList<>();
        try (Stream<Path> beside = Files.list(messages.getParent())) {
            for (Path source : beside.filter(file -> file.toString().endsWith("Text.java")).toList()) {
                String name = SOURCES.relativize(source).toString().replaceFirst("\\.java$", "")
                        .replaceAll("[/\\\\]", ".");
                Arrays.stream(Class.forName(name).getDeclaredFields())
                        .filter(field -> Modifier.isPublic(field.getModifiers())).map(Field::getName)
                        .forEach(fields::add);
            }
        }
        return fields;
    }
}
