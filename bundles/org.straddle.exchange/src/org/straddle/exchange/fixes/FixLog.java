package org.straddle.exchange.fixes;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.straddle.grid.GeoPosition;

/**
 * The fixes of a receiver out of one file, in the order of the file, on WGS 84.
 *
 * @param name of the file
 * @param readings at least one
 * @param remarks sentences on what was left out
 */
public record FixLog(String name, List<Reading> readings, List<String> remarks) {

    /**
     * One fix as the receiver gave it.
     *
     * @param at empty when the file gives no date
     * @param altitudeM above the ellipsoid, metres; empty when the file gives none, or only one above the sea
     * @param r95M the error that the receiver reported, as R95 in metres; empty when it reported none
     */
    public record Reading(Optional<Instant> at, GeoPosition position, OptionalDouble altitudeM, OptionalDouble r95M) {
    }

    public FixLog {
        readings = List.copyOf(readings);
        remarks = List.copyOf(remarks);
    }
}
