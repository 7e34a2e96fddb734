package org.coursewright.model.edit.command;

import java.util.List;
import java.util.Map;

import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;

/** Brings openings opposite another one. */
public final class AlignOpeningsCommand extends CombinedCommand {

    /** @param offsets from the outer start face of its wall to the near jamb, of at least one opening */
    public AlignOpeningsCommand(Map<Opening, Length> offsets) {
        super(offsets.keySet().iterator().next(),
                offsets.entrySet().stream().map(each -> new MoveOpeningCommand(each.getKey(), each.getValue()))
                        .toList(),
                List.copyOf(offsets.keySet()));
    }
}
