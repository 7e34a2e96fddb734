package org.coursewright.core.cost;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Length;

/**
 * A mix worked out for the people who mix it.
 *
 * @param mark of the mix
 * @param uses what it is for, such as {@code mortar of first courses} or {@code B14 blocks}
 * @param parts what goes in
 * @param perCubicMetre water aimed at in a cubic metre of mix, that in moist materials included (L)
 * @param batch one batch of the mixer at hand, if it can be made of whole steps of packs
 * @param block what one block takes, if blocks are pressed of it
 * @param grain largest grain against the thinnest joint, if both are known and it is a mortar
 * @param remark why there is no batch, empty if there is one
 */
public record MixSheet(String mark, List<String> uses, List<Part> parts, BigDecimal perCubicMetre,
        Optional<Batch> batch, Optional<Block> block, Optional<Grain> grain, String remark) {

    public MixSheet {
        Objects.requireNonNull(mark, "mark");
        uses = List.copyOf(uses);
        parts = List.copyOf(parts);
        Objects.requireNonNull(perCubicMetre, "perCubicMetre");
        Objects.requireNonNull(batch, "batch");
        Objects.requireNonNull(block, "block");
        Objects.requireNonNull(grain, "grain");
        Objects.requireNonNull(remark, "remark");
    }

    /**
     * An ingredient.
     *
     * @param material its mark
     * @param byVolume parts by loose volume, the first ingredient being 1
     * @param byMass parts by dry mass, the first ingredient being 1
     * @param mass dry, in a cubic metre of mix (kg)
     * @param loose volume as it lies, in a cubic metre of mix (m³)
     */
    public record Part(String material, BigDecimal byVolume, BigDecimal byMass, BigDecimal mass, BigDecimal loose) {
        // all numbers, rounded as fractions are
    }

    /**
     * One batch.
     *
     * @param mixer mark of the mixer, or what is assumed
     * @param litres that it yields
     * @param lines what goes in
     * @param leastWater to add (L), negative if materials are too wet
     * @param water to add (L)
     * @param mostWater to add (L)
     */
    public record Batch(String mixer, BigDecimal litres, List<BatchPart> lines, BigDecimal leastWater, BigDecimal water,
            BigDecimal mostWater) {

        public Batch {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A line of a batch card.
     *
     * @param material its mark
     * @param container such as {@code bag of 94 lb} or {@code litre}
     * @param exact how many by the mix
     * @param rounded how many to put in
     * @param deviation share by which that is more
     */
    public record BatchPart(String material, String container, BigDecimal exact, BigDecimal rounded,
            BigDecimal deviation) {
        // a line of a table
    }

    /**
     * What one block of a unit type takes.
     *
     * @param unit mark of the unit type
     * @param dryMass kg
     * @param stabiliser kg
     * @param ofSoil stabiliser by dry mass of soil
     * @param ofTotal stabiliser by dry mass of both
     * @param loose mix (L)
     * @param water aimed at (L)
     * @param leastWater L
     * @param mostWater L
     * @param fromPack blocks that one pack of the binder makes, if it comes in packs by mass
     */
    public record Block(String unit, BigDecimal dryMass, BigDecimal stabiliser, BigDecimal ofSoil, BigDecimal ofTotal,
            BigDecimal loose, BigDecimal water, BigDecimal leastWater, BigDecimal mostWater,
            Optional<BigDecimal> fromPack) {
        // all numbers, rounded as fractions are
    }

    /**
     * Largest grain against a joint: the joint is to be at least twice as thick.
     *
     * @param largest grain
     * @param joint thinnest that the bond rule allows
     * @param fits whether that is enough
     */
    public record Grain(Length largest, Length joint, boolean fits) {
        // the check is the engine's
    }
}
