package org.coursewright.core.geometry;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The points where walls end, also by the ends that are there. */
final class Nodes {

    private final List<Node> inOrder;
    private final Map<Arm, Node> byEnd = new HashMap<>();

    Nodes(List<Node> inOrder) {
        this.inOrder = inOrder;
        inOrder.forEach(node -> node.ends().forEach(end -> byEnd.put(end, node)));
    }

    /** @return the nodes in the order of their first ends */
    List<Node> inOrder() {
        return inOrder;
    }

    /** @return where a line's end is */
    Node at(Line line, Place end) {
        return byEnd.get(Arm.of(line, end));
    }
}
