package org.straddle.sky.track;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.orekit.time.DateComponents;
import org.orekit.time.OffsetModel;

/**
 * UTC−TAI since 1972, so that no data file has to be fetched. IERS Bulletin C lists every step; none
 * has been announced since 2017. Were one to come, instants after it would be off by a second until
 * this table grows, a shift common to every bird and of no effect on element sets from after it.
 */
public final class LeapSeconds {

    /** Year and month on whose first day each step took effect; the first row is the offset of 10 s in 1972. */
    private static final int[][] STEPS = {
        {1972, 1}, {1972, 7}, {1973, 1}, {1974, 1}, {1975, 1}, {1976, 1}, {1977, 1}, {1978, 1}, {1979, 1},
        {1980, 1}, {1981, 7}, {1982, 7}, {1983, 7}, {1985, 7}, {1988, 1}, {1990, 1}, {1991, 1}, {1992, 7},
        {1993, 7}, {1994, 7}, {1996, 1}, {1997, 7}, {1999, 1}, {2006, 1}, {2009, 1}, {2012, 7}, {2015, 7},
        {2017, 1}};
    private static final int SECONDS_IN_1972 = 10;

    /** The midnights that a leap second goes before. */
    static final List<Instant> MIDNIGHTS = Arrays.stream(STEPS).skip(1)
            .map(step -> LocalDate.of(step[0], step[1], 1).atStartOfDay(ZoneOffset.UTC).toInstant()).toList();
    static final Instant LAST = MIDNIGHTS.get(MIDNIGHTS.size() - 1);

    private LeapSeconds() {
    }

    /** How many there were up to an instant. */
    static int until(Instant instant) {
        if (!instant.isBefore(LAST)) {
            return MIDNIGHTS.size();
        }
        return (int) MIDNIGHTS.stream().filter(midnight -> !midnight.isAfter(instant)).count();
    }

    public static List<OffsetModel> offsets() {
        List<OffsetModel> offsets = new ArrayList<>();
        for (int i = 0; i < STEPS.length; i++) {
            offsets.add(new OffsetModel(new DateComponents(STEPS[i][0], STEPS[i][1], 1), SECONDS_IN_1972 + i));
        }
        return offsets;
    }
}
