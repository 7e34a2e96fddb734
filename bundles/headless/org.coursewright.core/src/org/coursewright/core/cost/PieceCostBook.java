package org.coursewright.core.cost;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;
import org.coursewright.takeoff.quantities.UnitShape;

/**
 * What single pieces cost, by the mark of the unit type.
 *
 * @param byType of types that have dimensions and prices
 */
public record PieceCostBook(Map<String, PieceCosts> byType) {

    public PieceCostBook {
        byType = Collections.unmodifiableSortedMap(new TreeMap<>(byType));
    }

    /**
     * Reads a project, on its editing thread; nothing is laid for it.
     *
     * @param project not null, not changed
     * @return costs of its unit types
     */
    public static PieceCostBook of(Project project) {
        PiecePricing pricing = new PiecePricing(CostReader.read(project));
        Map<String, PieceCosts> costs = new TreeMap<>();
        if (project.getCatalogue() != null) {
            project.getCatalogue().getUnitTypes().forEach(type -> shape(type).flatMap(pricing::of).ifPresent(
                    each -> costs.put(type.getMark(), each)));
        }
        return new PieceCostBook(costs);
    }

    private static Optional<UnitShape> shape(UnitType type) {
        boolean sized = type.getMark() != null && type.getLength() != null && type.getWidth() != null
                && type.getHeight() != null && type.getLength().signum() > 0 && type.getWidth().signum() > 0
                && type.getHeight().signum() > 0;
        return sized
                ? Optional.of(new UnitShape(type.getMark(), type.getLength(), type.getWidth(), type.getHeight()))
                : Optional.empty();
    }
}
