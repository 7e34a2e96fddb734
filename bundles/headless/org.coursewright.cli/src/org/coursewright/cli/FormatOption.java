package org.coursewright.cli;

import java.util.Arrays;
import java.util.Locale;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The option that chooses how results are written: as text for people, or as JSON for programs. */
public final class FormatOption {

    private enum Format {
        TEXT, JSON;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Option(names = "--format", paramLabel = "text|json", defaultValue = "text", converter = FormatReader.class, //
            description = "How to write the result (default: ${DEFAULT-VALUE}).")
    private Format format;

    /** @return whether the result is for programs */
    public boolean isJson() {
        return format == Format.JSON;
    }

    private static final class FormatReader implements ITypeConverter<Format> {

        @Override
        public Format convert(String value) {
            return Arrays.stream(Format.values()).filter(format -> format.word().equals(value)).findFirst().orElseThrow(
                    () -> new TypeConversionException("'%s' is neither text nor json.".formatted(value)));
        }
    }
}
