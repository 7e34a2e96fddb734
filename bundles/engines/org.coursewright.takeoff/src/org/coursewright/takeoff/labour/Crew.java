package org.coursewright.takeoff.labour;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.List;
import java.util.Objects;

import org.coursewright.takeoff.Fraction;

/**
 * People who work together.
 *
 * @param name of the crew
 * @param members by trade, at least one
 */
public record Crew(String name, List<Member> members) {

    /**
     * So many people of a trade.
     *
     * @param trade such as "mason" or "tender"
     * @param count greater than zero; a half is somebody shared with another crew
     */
    public record Member(String trade, Fraction count) {

        public Member {
            Objects.requireNonNull(trade, "trade");
            require(count.signum() > 0, "%s of trade %s: give more than zero.", count.toDecimal(), trade);
        }
    }

    public Crew {
        Objects.requireNonNull(name, "name");
        members = List.copyOf(members);
        require(!members.isEmpty(), "Crew %s has no members: give it some.", name);
        require(members.stream().map(Member::trade).distinct().count() == members.size(),
                "Crew %s names a trade twice: sum its members up.", name);
    }
}
