package org.coursewright.exchange.sheet.file;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.coursewright.exchange.sheet.Sheet;

/** The kind of file that a sheet is written as. */
public enum SheetForm {
    /** One PDF file with all pages. */
    PDF {
        @Override
        List<SheetFile> files(String name, Sheet sheet) throws IOException {
            return List.of(new SheetFile(name + ".pdf", PdfSheet.bytes(sheet)));
        }
    },
    /** One SVG file for each page. */
    SVG {
        @Override
        List<SheetFile> files(String name, Sheet sheet) {
            List<SheetFile> files = new ArrayList<>();
            for (int page = 0; page < sheet.pages().size(); page++) {
                String number = page == 0 ? "" : "-page" + (page + 1);
                files.add(new SheetFile(name + number + ".svg", SvgSheet.bytes(sheet.pages().get(page))));
            }
            return files;
        }
    };

    /** @return the files of a sheet, whose names begin with {@code name} */
    abstract List<SheetFile> files(String name, Sheet sheet) throws IOException;
}
