package org.straddle.exchange.maps;

import java.util.Collection;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

import org.straddle.grid.Candidate;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.GridCorner;
import org.straddle.grid.Square;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;

/** Makes a site of a place that the line scout found. Nobody was there: it has no visit and no review. */
public final class ScoutedSite {

    /** Roads on maps are drawn about so well: common practice, no source. A fix on the spot takes its place. Metres. */
    private static final double ERROR_OF_MAPS_M = 10;

    private ScoutedSite() {
    }

    /**
     * The mark is the place on the road; but where the station on the road would not reach the corner, it is the corner.
     *
     * @param others sites whose names are taken
     */
    public static Site of(Candidate candidate, Collection<Site> others) {
        Site site = Fresh.site();
        boolean walk = candidate.boundary() instanceof GridCorner && candidate.bandM() == 0;
        GeoPosition mark = walk ? ((GridCorner) candidate.boundary()).position() : candidate.position();
        site.setName(free(candidate.boundary() + (candidate.road().name().isEmpty() ? "" : " " + candidate.road().name()),
                others.stream().map(other -> Objects.toString(other.getName(), "")).collect(Collectors.toSet())));
        site.setLatitudeDeg(mark.latitudeDeg());
        site.setLongitudeDeg(mark.longitudeDeg());
        // The corner itself is known by its degrees, and found with a receiver, whose usual error stands in the model.
        if (!walk) {
            site.setMarkErrorM(ERROR_OF_MAPS_M);
        }
        site.setKind(candidate.kind() == Candidate.Kind.CORNER ? SiteKind.CORNER : SiteKind.LINE);
        candidate.squares().stream().map(Square::name).forEach(site.getSquares()::add);
        return site;
    }

    private static String free(String name, Set<String> taken) {
        String free = name;
        for (int number = 2; taken.contains(free); number++) {
            free = name + " " + number;
        }
        return free;
    }
}
