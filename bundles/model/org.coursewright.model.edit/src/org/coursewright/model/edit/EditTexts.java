package org.coursewright.model.edit;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;

/** The texts of this bundle, kept in {@code texts.properties}. */
public final class EditTexts {

    private static final ResourceBundle TEXTS = ResourceBundle.getBundle("org.coursewright.model.edit.texts");

    private EditTexts() {
    }

    /**
     * @param key of a text
     * @param values what its places {0}, {1} … are filled with
     * @return the text
     * @throws java.util.MissingResourceException if there is none of that key
     */
    public static String of(String key, Object... values) {
        return new MessageFormat(TEXTS.getString(key), Locale.ROOT).format(values);
    }

    /**
     * @param key of a text
     * @return the text as it stands, empty if there is none of that key
     */
    public static Optional<String> find(String key) {
        return TEXTS.containsKey(key) ? Optional.of(TEXTS.getString(key)) : Optional.empty();
    }
}
