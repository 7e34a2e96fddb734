package org.coursewright.exchange.sheet.file;

import java.io.IOException;

import org.coursewright.exchange.sheet.Sheet;

/** A sheet as PDF. */
final class PdfSheet {

    private PdfSheet() {
    }

    static byte[] bytes(Sheet sheet) throws IOException {
        return PdfPages.bytes("Setting-out sheet of wall " + sheet.mark(), sheet.pages());
    }
}
