package org.coursewright.bond.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.advice.AdviceCases.adjustables;
import static org.coursewright.bond.advice.AdviceCases.advise;
import static org.coursewright.bond.advice.AdviceCases.handed;
import static org.coursewright.bond.advice.AdviceCases.soon;

import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.RandomRooms;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Profiles of rooms against laying their walls for every value. */
class RoomProfilesTest {

    /** Those of an advice, and those fitted in a hurry from the same layout. */
    @ParameterizedTest
    @ValueSource(longs = {2, 3, 6})
    void everyValueIsToldAsItIsLaidOrBounded(long seed) {
        BondRequest room = new RandomRooms(seed).room();
        Advice advice = advise(room, adjustables(room), Optional.empty());
        ProfileAudit audit = new ProfileAudit(handed(room, advice.before()));

        assertThat(advice.profiles()).isNotEmpty().allSatisfy(audit::check);
        assertThat(adjustables(room)).map(adjustable -> soon(room, advice.before(), adjustable))
                .allSatisfy(profile -> {
                    assertThat(profile.points()).anyMatch(point -> point.basis() == ProfilePoint.Basis.LAID);
                    audit.check(profile);
                });
    }
}
