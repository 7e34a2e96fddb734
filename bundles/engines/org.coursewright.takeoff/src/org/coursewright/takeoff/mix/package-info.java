/**
 * Mixes of mortar, concrete and soil for blocks: from parts to masses, to volumes, to a batch card for the mixer.
 *
 * <p>Start with {@link org.coursewright.takeoff.mix.MixRecipe#amountsFor}, which tells what a volume of mix takes,
 * {@link org.coursewright.takeoff.mix.BatchCard} for whole bags and shovels, and
 * {@link org.coursewright.takeoff.mix.BlockMix} for blocks pressed on site. Yield is found by absolute volume: the volume
 * of the particles themselves, water and air (ACI 211.1). Arithmetic is exact; masses are in kilograms, densities in
 * kilograms per cubic metre. Results are estimates: try a batch, and test it, before building with it.
 */
package org.coursewright.takeoff.mix;
