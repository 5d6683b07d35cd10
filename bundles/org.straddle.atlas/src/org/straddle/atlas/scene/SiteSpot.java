package org.straddle.atlas.scene;

import java.util.List;

import org.straddle.atlas.plane.PlanePoint;
import org.straddle.drawing.TeamMark;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Square;

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
        INSIDE("inside"),
        /** Two squares side by side, on a meridian. */
        WEST_EAST("line"),
        /** Two squares one above the other, on a parallel. */
        SOUTH_NORTH("line"),
        /** Four squares around. */
        CORNER("corner");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public SiteSpot {
        squares = List.copyOf(squares);
        teams = List.copyOf(teams);
    }
}
