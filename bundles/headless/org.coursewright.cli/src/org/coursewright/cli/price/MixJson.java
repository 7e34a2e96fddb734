package org.coursewright.cli.price;

import org.coursewright.cli.FindingText;
import org.coursewright.cli.JsonText;
import org.coursewright.core.cost.MixSheet;
import org.coursewright.core.cost.MixSheets;

/** Writes mixes as {@code coursewright.mixes/1}, described in docs/formats/price-json.md. */
final class MixJson {

    private static final String SCHEMA = "coursewright.mixes/1";

    private final JsonText json;

    private MixJson(JsonText json) {
        this.json = json;
    }

    static String of(MixSheets mixes) {
        return JsonText.document(SCHEMA, json -> {
            json.member("estimate", true);
            json.array("mixes", mixes.sheets(), sheet -> json.object(() -> new MixJson(json).write(sheet)));
            FindingText.write(mixes.findings(), json);
        });
    }

    private void write(MixSheet sheet) {
        json.member("mix", sheet.mark());
        json.texts("uses", sheet.uses());
        json.array("parts", sheet.parts(), part -> json.object(() -> {
            json.member("material", part.material());
            json.member("byVolume", part.byVolume());
            json.member("byMass", part.byMass());
            json.member("mass", part.mass());
            json.member("loose", part.loose());
        }));
        json.member("water", sheet.perCubicMetre());
        sheet.batch().ifPresent(batch -> json.object("batch", () -> write(batch)));
        json.member("remark", sheet.remark());
        sheet.block().ifPresent(block -> json.object("block", () -> write(block)));
        sheet.grain().ifPresent(grain -> json.object("grain", () -> {
            json.member("largest", grain.largest());
            json.member("joint", grain.joint());
            json.member("fits", grain.fits());
        }));
    }

    private void write(MixSheet.Batch batch) {
        json.member("mixer", batch.mixer());
        json.member("litres", batch.litres());
        json.array("lines", batch.lines(), line -> json.object(() -> {
            json.member("material", line.material());
            json.member("container", line.container());
            json.member("exact", line.exact());
            json.member("rounded", line.rounded());
            json.member("deviation", line.deviation());
        }));
        json.member("leastWater", batch.leastWater());
        json.member("water", batch.water());
        json.member("mostWater", batch.mostWater());
    }

    private void write(MixSheet.Block block) {
        json.member("unit", block.unit());
        json.member("dryMass", block.dryMass());
        json.member("stabiliser", block.stabiliser());
        json.member("ofSoil", block.ofSoil());
        json.member("ofTotal", block.ofTotal());
        json.member("loose", block.loose());
        json.member("leastWater", block.leastWater());
        json.member("water", block.water());
        json.member("mostWater", block.mostWater());
        block.fromPack().ifPresent(blocks -> json.member("blocksFromPack", blocks));
    }
}
