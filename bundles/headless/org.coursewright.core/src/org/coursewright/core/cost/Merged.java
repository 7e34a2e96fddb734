package org.coursewright.core.cost;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.measure.Quantity;

/** Sums up lines of the same resource, element, work and formula, such as the scaffold of every wall. */
final class Merged {

    private record Key(String resource, String element, Work work, String formula, String unit) {

        static Key of(ResourceLine line) {
            return new Key(line.resource(), line.element(), line.work(), line.amount().formula(), line.amount()
                    .quantity().unitCode());
        }
    }

    private Merged() {
    }

    static List<ResourceLine> of(List<ResourceLine> lines) {
        Map<Key, List<ResourceLine>> groups = new LinkedHashMap<>();
        lines.forEach(line -> groups.computeIfAbsent(Key.of(line), key -> new ArrayList<>()).add(line));
        return groups.values().stream().map(Merged::sum).toList();
    }

    private static ResourceLine sum(List<ResourceLine> group) {
        ResourceLine first = group.get(0);
        if (group.size() == 1) {
            return first;
        }
        TakeoffLine amount = first.amount();
        Quantity sum = group.stream().map(line -> line.amount().quantity()).reduce(Quantity::plus).orElseThrow();
        List<String> elements = group.stream().flatMap(line -> line.amount().elements().stream()).distinct().toList();
        return new ResourceLine(first.resource(), first.element(), first.work(), new TakeoffLine(amount.item(), sum,
                amount.formula(), "Σ " + amount.expression(), amount.source(), inputs(group), elements));
    }

    /** Each part with what went into it. */
    private static List<TakeoffLine.Input> inputs(List<ResourceLine> group) {
        List<TakeoffLine.Input> inputs = new ArrayList<>();
        for (int i = 0; i < group.size(); i++) {
            TakeoffLine part = group.get(i).amount();
            String name = part.elements().size() == 1 ? part.elements().get(0) : "part " + (i + 1);
            inputs.add(new TakeoffLine.Input(name, part.quantity()));
            part.inputs().forEach(input -> inputs.add(new TakeoffLine.Input(name + ": " + input.symbol(), input
                    .value())));
        }
        return inputs;
    }
}
