package org.straddle.ui.editors;

import java.util.Locale;
import java.util.Optional;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.grid.Standing;
import org.straddle.model.Mark;
import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.outlook.PresenceArgument;
import org.straddle.ui.session.EventSession;

/** What is worked out about the mark of a site or a visit, in words. */
final class MarkText {

    private MarkText() {
    }

    /** How a mark was fixed. */
    static String how(Mark mark) {
        if (mark == null) {
            return "Nobody fixed the mark at this visit.";
        }
        int fixes = mark.getFixes().size();
        return mark.getMethod().getLiteral() + (fixes == 0 ? "" : ", " + fixes + (fixes == 1 ? " fix" : " fixes")) + ", datum "
                + mark.getDatum() + ("WGS 84".equals(mark.getDatum()) ? "" : " (squares are defined on WGS 84)");
    }

    /** How far the mark of a visit is from that of the site. */
    static String apart(Site site, Mark mark) {
        GeoPosition there = mark == null ? null : Marks.position(mark.getLatitudeDeg(), mark.getLongitudeDeg());
        GeoPosition here = Marks.position(site.getLatitudeDeg(), site.getLongitudeDeg());
        if (there == null || here == null) {
            return "–";
        }
        double metres = Geodesic.distanceM(here, there);
        return metres == 0 ? "At the mark of the site." : String.format(Locale.ROOT, metres < 1000
                ? "%.1f m from the mark of the site." : "%.0f m from the mark of the site.", metres);
    }

    /** Which squares a mark allows. */
    static String allows(EventSession session, Mark mark) {
        GeoPosition position = mark == null ? null : Marks.position(mark.getLatitudeDeg(), mark.getLongitudeDeg());
        double span = Optional.ofNullable(session.event().getPolicies()).map(Policies::getStationSpanM).orElse(0.0);
        try {
            return position == null ? "–" : SquareClaim.words(Standing.of(position, mark.getErrorM(), span));
        } catch (IllegalArgumentException impossible) {
            return impossible.getMessage();
        }
    }

    /** How well presence can be argued, and what would lift it, from the last computation. */
    static String presence(EventSession session, Site site) {
        if (site.getSquares().isEmpty()) {
            return "No square is claimed, so there is no presence to argue.";
        }
        return session.computed().flatMap(computed -> computed.snapshot().getSites().stream()
                .filter(copy -> copy.getId().equals(site.getId())).findFirst()
                .map(copy -> computed.outlook().argument(copy).map(MarkText::words)
                        .orElse("The claimed squares do not meet at the mark, so presence cannot be argued.")))
                .orElse("Being worked out …");
    }

    private static String words(PresenceArgument argument) {
        return argument.words() + (argument.suffices() ? "" : " " + argument.whatLifts());
    }
}
