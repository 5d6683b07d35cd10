package org.straddle.sky.prediction;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;

/**
 * Remembers values by key until their weights exceed a bound, then forgets those longest unused.
 * Safe for use by many threads.
 */
final class BoundedCache<K, V> {

    private final long mostWeight;
    private final ToLongFunction<V> weightOf;
    private final Map<K, V> values = new LinkedHashMap<>(16, 0.75f, true);
    private long weight;

    BoundedCache(long mostWeight, ToLongFunction<V> weightOf) {
        this.mostWeight = mostWeight;
        this.weightOf = weightOf;
    }

    synchronized Optional<V> get(K key) {
        return Optional.ofNullable(values.get(key));
    }

    synchronized void put(K key, V value) {
        V old = values.put(key, value);
        weight += weightOf.applyAsLong(value) - (old == null ? 0 : weightOf.applyAsLong(old));
        Iterator<V> eldest = values.values().iterator();
        while (weight > mostWeight && eldest.hasNext()) {
            weight -= weightOf.applyAsLong(eldest.next());
            eldest.remove();
        }
    }

    synchronized long weight() {
        return weight;
    }

    synchronized int size() {
        return values.size();
    }
}
