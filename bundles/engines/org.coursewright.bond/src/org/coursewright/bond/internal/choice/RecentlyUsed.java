package org.coursewright.bond.internal.choice;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;

/** Results that were asked for in this turn or the last; older ones are forgotten. */
final class RecentlyUsed<K, V> {

    private Map<K, V> now = new HashMap<>();
    private Map<K, V> before = new HashMap<>();

    /** To be called before each turn. */
    void begin() {
        before = now;
        now = new HashMap<>();
    }

    V get(K key, Supplier<V> work) {
        V known = now.get(key);
        if (known == null) {
            known = before.get(key);
            known = known == null ? work.get() : known;
            now.put(key, known);
        }
        return known;
    }
}
