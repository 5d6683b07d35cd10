package org.straddle.daysheet.sheet;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.straddle.grid.GeoPosition;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/**
 * Light that was worked out before. Finding the sun takes most of the time of reading a sheet, and few edits change
 * where a team is on a day.
 */
public final class LightMemory {

    /** A tenth of a degree of longitude is 24 s of solar time; the sheet shows no seconds. */
    private static final double ROUNDING_DEG = 0.1;
    private static final int MOST_DAYS = 2_000;

    private record Key(long latitude, long longitude, Window window) {
    }

    private final Map<Key, List<Light>> known = new ConcurrentHashMap<>();

    List<Light> light(Outlook outlook, GeoPosition position, Window window) {
        if (known.size() > MOST_DAYS) {
            known.clear();
        }
        Key key = new Key(Math.round(position.latitudeDeg() / ROUNDING_DEG),
                Math.round(position.longitudeDeg() / ROUNDING_DEG), window);
        return known.computeIfAbsent(key, k -> List.copyOf(Light.of(outlook, position, window)));
    }
}
