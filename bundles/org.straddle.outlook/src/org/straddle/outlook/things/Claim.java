package org.straddle.outlook.things;

import java.util.List;
import java.util.TreeSet;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.Square;
import org.straddle.grid.Standing;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;

/**
 * The kind and the squares that a site can claim by where its mark is.
 *
 * @param squares names in order
 */
public record Claim(SiteKind kind, List<String> squares) {

    public Claim {
        squares = List.copyOf(squares);
    }

    /**
     * @param errorM error of the mark, R95 in metres
     * @param spanM length of the set-up station across a line, metres
     * @throws IllegalArgumentException when a length is negative, or both together reach beyond any square
     */
    public static Claim of(GeoPosition mark, double errorM, double spanM) {
        Standing standing = Standing.of(mark, errorM, spanM);
        return new Claim(switch (standing.kind()) {
            case INSIDE -> SiteKind.INSIDE;
            case LINE -> SiteKind.LINE;
            case CORNER -> SiteKind.CORNER;
        }, standing.squares().stream().map(Square::name).sorted().toList());
    }

    /** Whether a site claims just this. */
    public boolean isOf(Site site) {
        return site.getKind() == kind && List.copyOf(new TreeSet<>(site.getSquares())).equals(squares);
    }
}
