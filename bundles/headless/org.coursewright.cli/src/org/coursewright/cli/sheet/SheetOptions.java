package org.coursewright.cli.sheet;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.coursewright.cli.BadInputException;
import org.coursewright.exchange.sheet.SheetSettings;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.LengthFormatException;

import picocli.CommandLine.Option;

/** What may be asked of sheets. */
final class SheetOptions {

    private static final Pattern SCALE = Pattern.compile("\\s*1\\s*:\\s*(\\d{1,4})\\s*");
    private static final int LEAST_SCALE = 5;
    private static final int MOST_SCALE = 1000;
    private static final Length MOST_LINE_OFFSET = Length.ofMillimetres(100);

    @Option(names = "--scale", paramLabel = "1:N", description = {
            "Scale of the drawings, 1:5 to 1:1000. The next standard scale if it does not fit the paper;",
            "the largest standard scale that fits if it is left out."})
    private String scale;

    @Option(names = "--line-offset", paramLabel = "LENGTH", description = {
            "How far the mason's line stands off the face, up to 100 mm (3/16 in if it is left out)."})
    private String lineOffset;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "Date to print (none if it is left out).")
    private LocalDate date;

    SheetSettings settings(LengthFormat format) throws BadInputException {
        return new SheetSettings(readScale(), readLineOffset(format), Optional.ofNullable(date).map(
                LocalDate::toString));
    }

    private Optional<Integer> readScale() throws BadInputException {
        if (scale == null) {
            return Optional.empty();
        }
        Matcher matcher = SCALE.matcher(scale);
        int number = matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
        if (number < LEAST_SCALE || number > MOST_SCALE) {
            throw new BadInputException(
                    "--scale: \"%s\" is no scale of a sheet. Give one from 1:%d to 1:%d, such as 1:20."
                            .formatted(scale, LEAST_SCALE, MOST_SCALE));
        }
        return Optional.of(number);
    }

    private Length readLineOffset(LengthFormat format) throws BadInputException {
        if (lineOffset == null) {
            return SheetSettings.USUAL_LINE_OFFSET;
        }
        try {
            Length offset = format.parse(lineOffset);
            if (offset.signum() < 0 || offset.isGreaterThan(MOST_LINE_OFFSET)) {
                throw new BadInputException("--line-offset: %s is not between 0 and %s.".formatted(format.format(
                        offset), format.format(MOST_LINE_OFFSET)));
            }
            return offset;
        } catch (LengthFormatException e) {
            throw new BadInputException("--line-offset: " + e.getMessage());
        }
    }
}
