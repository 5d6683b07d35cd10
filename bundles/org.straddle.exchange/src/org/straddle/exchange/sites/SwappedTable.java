package org.straddle.exchange.sites;

import java.util.Optional;

import org.straddle.exchange.CoordinateOrder;
import org.straddle.exchange.EventPlace;
import org.straddle.grid.GeoPosition;

/**
 * Whether a file seems to have latitude and longitude in the wrong order, though both may be in range, judged by a
 * place that it should be near.
 */
public final class SwappedTable {

    /** So many lines of a table tell. */
    private static final int ENOUGH = 500;

    private SwappedTable() {
    }

    /**
     * True when swapping would bring positions into range that are out of it and lose none, and none of the others is
     * near the place as it is written; or when it would bring nine of ten near the place while nine of ten are far from it.
     */
    static boolean seemsSwapped(SourceTable table, SiteMapping mapping, Optional<GeoPosition> near) {
        Count written = Count.of(table, mapping, CoordinateOrder.OF_THE_FORMAT, near);
        Count swapped = Count.of(table, mapping, CoordinateOrder.SWAPPED, near);
        if (written.refused != swapped.refused) {
            return written.refused > swapped.refused && swapped.refused * 10 <= written.refused && written.near == 0;
        }
        return near.isPresent() && swapped.placed > 0 && written.near * 10 <= written.placed && swapped.near * 10 >= swapped.placed * 9;
    }

    /** @param refused lines out of range that fit the other way round */
    private record Count(int placed, int near, int refused) {

        static Count of(SourceTable table, SiteMapping mapping, CoordinateOrder order, Optional<GeoPosition> place) {
            int placed = 0;
            int near = 0;
            int refused = 0;
            for (SourceTable.Row row : table.rows().subList(0, Math.min(ENOUGH, table.rows().size()))) {
                try {
                    Optional<GeoPosition> position = SiteValues.position(table, row, mapping, order);
                    placed += position.isPresent() ? 1 : 0;
                    near += position.isPresent() && place.isPresent() && EventPlace.isNear(position.get(), place.get()) ? 1 : 0;
                } catch (SiteValues.Refusal e) {
                    refused += e.fitsSwapped() ? 1 : 0;
                }
            }
            return new Count(placed, near, refused);
        }
    }
}
