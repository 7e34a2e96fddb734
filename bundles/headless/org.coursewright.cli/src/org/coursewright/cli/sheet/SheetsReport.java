package org.coursewright.cli.sheet;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.coursewright.cli.JsonText;
import org.coursewright.cli.TextTable;
import org.coursewright.exchange.sheet.Sheet;

/**
 * Which sheets were written.
 *
 * @param folder they are in
 * @param sheets in the order of the walls
 * @param files by wall mark
 */
record SheetsReport(Path folder, List<Sheet> sheets, Map<String, List<String>> files) {

    private static final String SCHEMA = "coursewright.sheets/1";

    String text() {
        TextTable table = new TextTable();
        table.row("wall", "scale", "pages", "file");
        sheets.forEach(sheet -> table.row(sheet.mark(), "1:" + sheet.scale(), sheet.pages().size(),
                String.join(", ", files.get(sheet.mark()))));
        return "%s\n\n%d %s in %s.".formatted(String.join("\n", table.lines()), sheets.size(),
                sheets.size() == 1 ? "sheet" : "sheets", folder);
    }

    String json() {
        return JsonText.document(SCHEMA, json -> {
            json.member("folder", folder.toString());
            json.array("sheets", sheets, sheet -> json.object(() -> {
                json.member("wall", sheet.mark());
                json.member("scale", sheet.scale());
                json.member("pages", sheet.pages().size());
                json.words("files", files.get(sheet.mark()));
            }));
        });
    }
}
