package org.straddle.atlas.scene;

import java.util.List;

import org.straddle.atlas.plane.PlanePoint;
import org.straddle.drawing.TeamMark;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Square;
import org.straddle.model.SiteKind;
import org.straddle.model.naming.Naming;

/**
 * A site on the map.
 *
 * @param id of the site
 * @param name as people call it
 * @param kind what it claims to be
 * @param squares that it claims
 * @param teams that stop there, by number
 * @param attention what the checks found about it
 */
public record SiteSpot(String id, String name, Kind kind, List<Square> squares, GeoPosition position, PlanePoint at,
        List<TeamMark> teams, Attention attention) {

    /** How many squares meet at the site, and how they lie to each other. */
    public enum Kind {
        /** Within one square. */
        INSIDE(SiteKind.INSIDE),
        /** Two squares side by side, on a meridian. */
        WEST_EAST(SiteKind.LINE),
        /** Two squares one above the other, on a parallel. */
        SOUTH_NORTH(SiteKind.LINE),
        /** Four squares around. */
        CORNER(SiteKind.CORNER);

        private final SiteKind kind;

        Kind(SiteKind kind) {
            this.kind = kind;
        }

        public String word() {
            return Naming.of(kind);
        }
    }

    public SiteSpot {
        squares = List.copyOf(squares);
        teams = List.copyOf(teams);
    }
}
