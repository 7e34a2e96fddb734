package org.coursewright.cli.fit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.coursewright.cli.BadInputException;
import org.coursewright.core.display.ProjectFormat;
import org.coursewright.core.fit.CutRate;
import org.coursewright.core.fit.FitSettings;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.LengthFormatException;
import org.coursewright.measure.Money;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;

import picocli.CommandLine.Option;

/** What may be proposed. */
final class FitOptions {

    @Option(names = "--wall", paramLabel = "MARK", description = "Change dimensions of this wall only.")
    private String wall;

    @Option(names = "--budget", paramLabel = "LENGTH", description = {
            "Most that all changes together may come to, each counted as a distance", "(no limit if it is left out)."})
    private String budget;

    @Option(names = "--wall-tolerance", paramLabel = "LENGTH", description = {
            "How far the end of a wall may move that ends in the open and has no tolerance of its own in the project",
            "(none if it is left out)."})
    private String wallTolerance;

    @Option(names = "--minutes-per-cut", paramLabel = "MINUTES", description = {
            "Labour of one cut, instead of what the rates of the project say."})
    private BigDecimal minutesPerCut;

    @Option(names = "--cost-per-cut", paramLabel = "AMOUNT", description = {
            "Cost of one cut without the block, such as \"1.25 USD\"; with --minutes-per-cut.",
            "Then only cutting is told, no units and no laying."})
    private String costPerCut;

    FitSettings settings(Project project) throws BadInputException {
        LengthFormat format = ProjectFormat.of(project);
        Optional<Length> most = budget == null
                ? Optional.empty()
                : Optional.of(length("--budget", budget, format));
        Length tolerance = wallTolerance == null
                ? Length.ZERO
                : length("--wall-tolerance", wallTolerance, format);
        return new FitSettings(wall(project), most, tolerance, rate());
    }

    /** Marks are found whatever their case, as in {@code lay}. */
    private Optional<String> wall(Project project) throws BadInputException {
        if (wall == null) {
            return Optional.empty();
        }
        List<String> marks = Stream.ofNullable(project.getBuilding())
                .flatMap(building -> building.getStoreys().stream()).flatMap(storey -> storey.getWalls().stream())
                .map(Wall::getMark).filter(Objects::nonNull).toList();
        Optional<String> found = marks.stream().filter(mark -> mark.equalsIgnoreCase(wall.strip())).findFirst();
        if (found.isEmpty()) {
            throw new BadInputException("--wall: There is no wall \"%s\". Walls are %s.".formatted(wall,
                    marks.stream().limit(50).collect(Collectors.joining(", "))));
        }
        return found;
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
