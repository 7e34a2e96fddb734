package org.coursewright.takeoff.cost;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/** Elements by code. */
public final class ElementTable {

    private final Map<String, Element> elements = new TreeMap<>();

    /** @param elements with different codes */
    public ElementTable(Collection<Element> elements) {
        elements.forEach(element -> this.elements.put(element.code(), element));
    }

    /**
     * The elements of ASTM E1557 (UNIFORMAT II), level 3, as far as masonry buildings need them. Codes and titles are from
     * memory: check them against the standard before handing them on.
     *
     * @return that table
     */
    public static ElementTable uniformat2() {
        try (InputStream stream = ElementTable.class.getResourceAsStream("uniformat2.csv");
                BufferedReader lines = new BufferedReader(new InputStreamReader(Objects.requireNonNull(stream),
                        StandardCharsets.UTF_8))) {
            return new ElementTable(lines.lines().map(line -> line.split(",", 2)).map(cells -> new Element(cells[0],
                    cells[1])).toList());
        } catch (IOException e) {
            throw new UncheckedIOException("The table of elements cannot be read from the bundle.", e);
        }
    }

    /** @return the element with that code, if the table has it */
    public Optional<Element> find(String code) {
        return Optional.ofNullable(elements.get(code));
    }

    /** @return all elements by rising code */
    public Collection<Element> all() {
        return Collections.unmodifiableCollection(elements.values());
    }
}
