package org.coursewright.model.edit;

/**
 * Why an edit is not made.
 *
 * @param reason whole sentences for people: what is wrong, the value, what to do
 */
public record Refusal(String reason) {

    /**
     * @param key of the text
     * @param values what it is filled with
     * @return a refusal in the words of {@code texts.properties}
     */
    public static Refusal of(String key, Object... values) {
        return new Refusal(EditTexts.of("refusal." + key, values));
    }
}
