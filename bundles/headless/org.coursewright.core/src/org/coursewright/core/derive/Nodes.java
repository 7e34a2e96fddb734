package org.coursewright.core.derive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The results that a graph knows of, in the order in which they were first asked for. Guarded by the graph's monitor. */
final class Nodes {

    private final Map<Derived<?>, Node> known = new LinkedHashMap<>();

    /** @return the node of a result, made after those of its inputs if there is none yet */
    Node of(Derived<?> result) {
        Node before = known.get(result);
        if (before != null) {
            return before;
        }
        List<Node> inputs = new ArrayList<>();
        for (Source<?> input : result.inputs()) {
            if (input instanceof Derived<?> derived) {
                inputs.add(of(derived));
            }
        }
        Node made = new Node(result, inputs);
        known.put(result, made);
        return made;
    }

    /** @return those that somebody listens to */
    List<Node> wanted() {
        return known.values().stream().filter(Node::isWanted).toList();
    }

    /** @return what is to be computed, what somebody waits for first */
    List<Node> staleAndWanted() {
        return known.values().stream().filter(node -> node.isWanted() && !node.isSettled())
                .sorted(Comparator.comparing(node -> !node.declared().isAhead())).toList();
    }
}
