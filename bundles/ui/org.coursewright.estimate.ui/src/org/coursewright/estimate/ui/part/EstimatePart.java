package org.coursewright.estimate.ui.part;

import java.util.Arrays;
import java.util.Locale;

/** The parts of an estimate, each with an editor of its own. */
public enum EstimatePart {

    /** What the building takes. */
    TAKEOFF(EstimateText.takeoff),
    /** What it costs. */
    PRICE(EstimateText.price),
    /** What it would cost otherwise. */
    SCENARIOS(EstimateText.scenarios),
    /** How its mortars and blocks are mixed. */
    MIXES(EstimateText.mixes);

    private static final String BUNDLE = "org.coursewright.estimate.ui";

    private final String title;

    EstimatePart(String title) {
        this.title = title;
    }

    /**
     * @param key of a part
     * @return that part
     * @throws IllegalArgumentException if there is none
     */
    public static EstimatePart of(String key) {
        return Arrays.stream(values()).filter(part -> part.key().equals(key)).findFirst().orElseThrow(
                () -> new IllegalArgumentException("An estimate has no part \"%s\".".formatted(key)));
    }

    /** @return what parameters of commands call it */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** @return its name for people */
    public String title() {
        return title;
    }

    /** @return under which its editor is registered */
    public String editor() {
        return BUNDLE + "." + key();
    }
}
