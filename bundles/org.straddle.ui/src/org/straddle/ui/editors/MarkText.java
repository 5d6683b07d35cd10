package org.straddle.ui.editors;

import java.util.Optional;

import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.grid.Standing;
import org.straddle.model.Mark;
import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.PresenceArgument;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/** What is worked out about the mark of a site or a visit, in words. */
final class MarkText {

    private static final Catalogue TEXTS = Catalogue.of(MarkText.class);

    private MarkText() {
    }

    /** How a mark was fixed. */
    static String how(Mark mark) {
        if (mark == null) {
            return TEXTS.text("markText.none");
        }
        int fixes = mark.getFixes().size();
        return TEXTS.text("markText.how", "method", Naming.of(mark.getMethod()), "fixes", fixes, "datum", mark.getDatum(),
                "wgs84", Literals.MARK__DATUM.getDefaultValue().equals(mark.getDatum()));
    }

    /** How far the mark of a visit is from that of the site. */
    static String apart(Site site, Mark mark) {
        GeoPosition there = mark == null ? null : Marks.position(mark.getLatitudeDeg(), mark.getLongitudeDeg());
        GeoPosition here = Marks.position(site.getLatitudeDeg(), site.getLongitudeDeg());
        if (there == null || here == null) {
            return "–";
        }
        double metres = Geodesic.distanceM(here, there);
        return metres == 0 ? TEXTS.text("markText.same")
                : TEXTS.text("markText.apart", "distance", FigureText.inCurrent().distance(metres));
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
            return TEXTS.text("markText.presence.nosquare");
        }
        return session.computed().flatMap(computed -> computed.snapshot().getSites().stream()
                .filter(copy -> copy.getId().equals(site.getId())).findFirst()
                .map(copy -> computed.outlook().argument(copy).map(MarkText::words)
                        .orElse(TEXTS.text("markText.presence.apart"))))
                .orElse(TEXTS.text("markText.presence.computing"));
    }

    private static String words(PresenceArgument argument) {
        return argument.suffices() ? argument.words()
                : TEXTS.text("markText.presence", "argument", argument.words(), "lift", argument.whatLifts());
    }
}
