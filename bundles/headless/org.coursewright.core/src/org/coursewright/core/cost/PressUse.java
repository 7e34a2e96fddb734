package org.coursewright.core.cost;

import java.util.List;

import org.coursewright.measure.Length;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.mix.BlockMix;
import org.coursewright.takeoff.mix.IngredientAmount;
import org.coursewright.takeoff.mix.MixAmounts;
import org.coursewright.takeoff.mix.StabiliserShare;

/**
 * What blocks pressed on site take: soil and stabiliser by the parts of their mix, water, and pressing.
 *
 * @param mix with recipe and dry density
 * @param block volume of one
 * @param resources where lines go
 */
record PressUse(MixBrief mix, Volume block, Resources resources) {

    private static final Formula WATER = new Formula("block.water", "pressed × dryMassOfBlock × water",
            "published notes on stabilised soil blocks");

    BlockMix blocks() {
        return new BlockMix(block, mix.dryDensity().orElseThrow(), looseAtLeastOne(), new StabiliserShare(mix
                .stabiliserOfSoil(), StabiliserShare.Convention.OF_SOIL),
                mix.recipe().orElseThrow().water().target(),
                mix.spoiled());
    }

    private Fraction looseAtLeastOne() {
        return mix.loose().compareTo(Fraction.ONE) < 0 ? Fraction.ONE : mix.loose();
    }

    void add(String element, long count, List<String> elements, String resource) {
        BlockMix blocks = blocks();
        Fraction pressed = Fraction.of(blocks.pressed(count));
        Fraction mass = blocks.dryMass();
        TraceInput pressedInput = TraceInput.of("pressed", blocks.pressed(count));
        TraceInput massInput = MixUse.kilograms("dryMassOfBlock", mass);
        MixAmounts round = mix.oneRound();
        for (int i = 0; i < round.ingredients().size(); i++) {
            IngredientAmount part = round.ingredients().get(i);
            Fraction share = share(part, blocks);
            new MaterialUse(mix.materials().get(i), part.ingredient(), resources).add(element, Work.PRESS, pressed
                    .times(mass).times(share),
                    new MaterialUse.Origin("pressed × dryMassOfBlock × share", List.of(
                            pressedInput, massInput, TraceInput.of("share", share)), elements));
        }
        resources.add(MixUse.WATER, element, Work.PRESS, pressed.times(mass).times(blocks.water()), UnitCode.LITRE,
                new Trace(WATER, List.of(pressedInput, massInput, TraceInput.of("water", blocks.water())), elements));
        resources.addWork(Work.PRESS, element, resource, Length.ZERO, pressed);
    }

    /** Binders share the stabiliser, everything else the soil, each by its mass in a round. */
    private Fraction share(IngredientAmount part, BlockMix blocks) {
        boolean binder = part.ingredient().binder();
        Fraction ofTotal = blocks.stabiliser().ofTotal();
        return part.dryMass().dividedBy(mix.mass(binder)).times(binder ? ofTotal : Fraction.ONE.minus(ofTotal));
    }
}
