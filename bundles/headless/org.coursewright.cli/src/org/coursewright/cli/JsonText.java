package org.coursewright.cli;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

import org.coursewright.measure.Length;

import com.google.gson.stream.JsonWriter;

/**
 * A JSON document (RFC 8259) in the making. Lengths are written in millimetres as exact decimals, numbers never with an
 * exponent, lists of plain values on one line.
 */
public final class JsonText {

    /** Writes the members of an object or the elements of an array. */
    @FunctionalInterface
    public interface Content {
        /** Writes into the open object or array. */
        void write();
    }

    private final StringWriter text = new StringWriter();
    private final JsonWriter writer = new JsonWriter(text);

    private JsonText() {
        writer.setIndent("  ");
        writer.setHtmlSafe(false);
    }

    /**
     * Writes a document.
     *
     * @param schema name and version of its format, the first member
     * @param content writes the other members
     * @return the document
     */
    public static String document(String schema, java.util.function.Consumer<JsonText> content) {
        JsonText json = new JsonText();
        json.object(() -> {
            json.member("schema", schema);
            content.accept(json);
        });
        return json.text.toString();
    }

    /** Writes an object as an element. */
    public void object(Content content) {
        run(writer::beginObject);
        content.write();
        run(writer::endObject);
    }

    /** Writes an object as a member. */
    public void object(String name, Content content) {
        name(name);
        object(content);
    }

    /** Writes an array, one element for each item. */
    public <T> void array(String name, List<T> items, java.util.function.Consumer<T> element) {
        name(name);
        run(writer::beginArray);
        items.forEach(element);
        run(writer::endArray);
    }

    /** Writes a text as a member. */
    public void member(String name, String value) {
        name(name);
        run(() -> writer.value(value));
    }

    /** Writes a whole number as a member. */
    public void member(String name, long value) {
        name(name);
        run(() -> writer.value(value));
    }

    /** Writes true or false as a member. */
    public void member(String name, boolean value) {
        name(name);
        run(() -> writer.value(value));
    }

    /** Writes a decimal number as a member. */
    public void member(String name, BigDecimal value) {
        name(name);
        run(() -> writer.jsonValue(value.toPlainString()));
    }

    /** Writes a length in millimetres as a member. */
    public void member(String name, Length value) {
        member(name, value.toMillimetres());
    }

    /** Writes lengths in millimetres as an array on one line. */
    public void lengths(String name, List<Length> values) {
        onOneLine(name, values.stream().map(value -> value.toMillimetres().toPlainString()).toList());
    }

    /** Writes words, which need no escaping, as an array on one line. */
    public void words(String name, List<String> values) {
        onOneLine(name, values.stream().map(value -> '"' + value + '"').toList());
    }

    /** Writes texts as an array. */
    public void texts(String name, List<String> values) {
        array(name, values, value -> run(() -> writer.value(value)));
    }

    private void name(String name) {
        run(() -> writer.name(name));
    }

    private void onOneLine(String name, List<String> values) {
        name(name);
        run(() -> writer.jsonValue(values.stream().collect(Collectors.joining(", ", "[", "]"))));
    }

    /** What the writer does; it fails only if its text does, which is in memory. */
    private interface Step {
        Object run() throws IOException;
    }

    private static void run(Step step) {
        try {
            step.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
