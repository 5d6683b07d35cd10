package org.straddle.worth;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.sky.ElementSet;
import org.straddle.sky.Viewpoint;
import org.straddle.sky.Window;
import org.straddle.sky.prediction.Area;
import org.straddle.sky.prediction.CommonMinutes;
import org.straddle.sky.prediction.Ephemeris;

/**
 * How long parts of passes serve the groups of chasers. What was asked lately is remembered for all events, since an edit
 * changes next to nothing of it. Safe for use by many threads.
 */
final class MinutesTable {

    /** A large plan has some hundred turns, and the day sheet asks about some hundred more. */
    private static final int MOST_KNOWN = 4096;

    private static final Map<Asked, List<GroupMinutes>> KNOWN = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, List<GroupMinutes>> eldest) {
            return size() > MOST_KNOWN;
        }
    };

    private record Asked(ElementSet elements, Viewpoint here, Window during, List<Optional<Area>> homes, double leastDeg,
            QualityRamp quality) {
    }

    private final Homes homes;
    private final double leastDeg;
    private final QualityRamp quality;
    private Ephemeris latest;
    private CommonMinutes ofLatest;

    /** @param leastDeg elevation above which the bird can be worked from the homes */
    MinutesTable(Homes homes, double leastDeg, QualityRamp quality) {
        this.homes = homes;
        this.leastDeg = leastDeg;
        this.quality = quality;
    }

    /** Whether these groups live where those of the table do. */
    boolean isOf(List<ChaserGroup> groups) {
        return homes.known().equals(groups.stream().map(ChaserGroup::home).toList());
    }

    /** By group. Quickest when one bird is asked about after the other. */
    List<GroupMinutes> of(Ephemeris ephemeris, Viewpoint here, Window during) {
        Asked asked = new Asked(ephemeris.elements(), here, during, homes.known(), leastDeg, quality);
        synchronized (KNOWN) {
            List<GroupMinutes> known = KNOWN.get(asked);
            if (known != null) {
                return known;
            }
        }
        List<GroupMinutes> computed = computed(ephemeris, here, during);
        synchronized (KNOWN) {
            KNOWN.put(asked, computed);
        }
        return computed;
    }

    private synchronized List<GroupMinutes> computed(Ephemeris ephemeris, Viewpoint here, Window during) {
        double[] ofPlaces = homes.all().isPresent() ? common(ephemeris).of(here, 0, during) : new double[0];
        GroupMinutes near = null;
        List<GroupMinutes> all = new ArrayList<>();
        for (int group = 0; group < homes.known().size(); group++) {
            if (homes.isKnown(group)) {
                all.add(homes.of(group, ofPlaces));
            } else {
                near = near != null ? near : near(ephemeris, here, during);
                all.add(near);
            }
        }
        return List.copyOf(all);
    }

    private CommonMinutes common(Ephemeris ephemeris) {
        if (latest != ephemeris) {
            latest = ephemeris;
            ofLatest = new CommonMinutes(ephemeris, homes.all().orElseThrow(), leastDeg, quality);
        }
        return ofLatest;
    }

    /** For chasers who are taken to live where the station is. */
    private GroupMinutes near(Ephemeris ephemeris, Viewpoint here, Window during) {
        double[] minutes = new CommonMinutes(ephemeris, Area.of(here.place()), leastDeg, quality).of(here, 0, during);
        return GroupMinutes.of(minutes, new double[] { 1 }, 0, 1);
    }
}
