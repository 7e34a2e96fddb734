package org.coursewright.cli.sheet;

import org.coursewright.exchange.sheet.file.SheetForm;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads what kind of file is wanted. */
final class SheetFormReader implements ITypeConverter<SheetForm> {

    @Override
    public SheetForm convert(String value) {
        return switch (value) {
            case "pdf" -> SheetForm.PDF;
            case "svg" -> SheetForm.SVG;
            default -> throw new TypeConversionException("'%s' is neither pdf nor svg.".formatted(value));
        };
    }
}
