package org.coursewright.takeoff.labour;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.List;

import org.coursewright.measure.Length;
import org.coursewright.takeoff.Fraction;

/**
 * How output changes with height above the floor or scaffold base. A usual set is 0.7 for the first three courses and 0.85
 * to 0.9 from 1.5 m on scaffold (common practice, no source).
 *
 * @param bands by rising height; below the first, output is as under plain conditions
 */
public record HeightFactors(List<Band> bands) {

    /** The same output at every height. */
    public static final HeightFactors NONE = new HeightFactors(List.of());

    /**
     * Output from some height up to the next band.
     *
     * @param from height
     * @param output by which output is multiplied, greater than zero
     */
    public record Band(Length from, Fraction output) {

        public Band {
            require(output.signum() > 0, "Output from %s up is multiplied by %s: give more than zero.", from, output
                    .toDecimal());
        }
    }

    public HeightFactors {
        bands = List.copyOf(bands);
        for (int i = 1; i < bands.size(); i++) {
            require(bands.get(i - 1).from().isLessThan(bands.get(i).from()),
                    "The height band from %s follows the one from %s: sort them by rising height.", bands.get(i).from(),
                    bands.get(i - 1).from());
        }
    }

    /** @return by what output at a height is multiplied */
    public Fraction at(Length height) {
        Fraction output = Fraction.ONE;
        for (Band band : bands) {
            if (!height.isLessThan(band.from())) {
                output = band.output();
            }
        }
        return output;
    }
}
