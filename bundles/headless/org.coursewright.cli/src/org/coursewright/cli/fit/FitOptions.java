package org.coursewright.cli.fit;

import java.math.BigDecimal;
import java.util.Optional;

import org.coursewright.cli.BadInputException;
import org.coursewright.core.fit.CutRate;
import org.coursewright.core.fit.FitSettings;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.LengthFormatException;
import org.coursewright.measure.Money;

import picocli.CommandLine.Option;

/** What may be proposed. */
final class FitOptions {

    @Option(names = "--budget", paramLabel = "LENGTH", description = {
            "Most that all changes together may come to, each counted as a distance", "(no limit if it is left out)."})
    private String budget;

    @Option(names = "--wall-tolerance", paramLabel = "LENGTH", description = {
            "How far the end of a wall may move that ends in the open (none if it is left out).",
            "Openings have tolerances of their own in the project."})
    private String wallTolerance;

    @Option(names = "--minutes-per-cut", paramLabel = "MINUTES", description = {
            "Labour of one cut, to tell the time that is saved."})
    private BigDecimal minutesPerCut;

    @Option(names = "--cost-per-cut", paramLabel = "AMOUNT", description = {
            "Cost of one cut without the block, such as \"1.25 USD\"; with --minutes-per-cut."})
    private String costPerCut;

    FitSettings settings(LengthFormat format) throws BadInputException {
        Optional<Length> most = budget == null
                ? Optional.empty()
                : Optional.of(length("--budget", budget, format));
        Length tolerance = wallTolerance == null
                ? Length.ZERO
                : length("--wall-tolerance", wallTolerance, format);
        return new FitSettings(most, tolerance, rate());
    }

    private static Length length(String option, String text, LengthFormat format) throws BadInputException {
        try {
            Length length = format.parse(text);
            if (length.signum() < 0) {
                throw new BadInputException("%s: %s is less than nothing. Give a length of zero or more.".formatted(
                        option, format.format(length)));
            }
            return length;
        } catch (LengthFormatException e) {
            throw new BadInputException(option + ": " + e.getMessage());
        }
    }

    private Optional<CutRate> rate() throws BadInputException {
        if (minutesPerCut == null) {
            if (costPerCut != null) {
                throw new BadInputException("--cost-per-cut goes with --minutes-per-cut. Give both.");
            }
            return Optional.empty();
        }
        if (minutesPerCut.signum() < 0) {
            throw new BadInputException(
                    "--minutes-per-cut: %s is less than nothing. Give zero or more.".formatted(minutesPerCut));
        }
        return Optional.of(new CutRate(minutesPerCut, cost()));
    }

    private Optional<Money> cost() throws BadInputException {
        try {
            return Optional.ofNullable(costPerCut).map(Money::fromStored);
        } catch (IllegalArgumentException e) {
            throw new BadInputException("--cost-per-cut: " + e.getMessage());
        }
    }
}
