package org.coursewright.cli.project;

import java.util.Arrays;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.LengthFormat;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads {@code in} or {@code mm}. */
final class DisplayUnitConverter implements ITypeConverter<LengthFormat> {

    @Override
    public LengthFormat convert(String value) {
        return Arrays.stream(DisplayUnit.values()).filter(unit -> unit.symbol().equalsIgnoreCase(value)).findFirst()
                .map(LengthFormat::of)
                .orElseThrow(() -> new TypeConversionException("'%s' is neither in nor mm.".formatted(value)));
    }
}
