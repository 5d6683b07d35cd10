package org.straddle.ui.editors;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

import org.eclipse.emf.common.command.Command;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Square;
import org.straddle.grid.Standing;
import org.straddle.model.Policies;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.naming.Naming;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** What the mark of a site allows to claim, told beside what is claimed. */
final class SquareClaim {

    private static final Catalogue TEXTS = Catalogue.of(SquareClaim.class);

    private final EventSession session;
    private final Site site;

    SquareClaim(EventSession session, Site site) {
        this.session = session;
        this.site = site;
    }

    /** Empty if the mark is no position. */
    Optional<Standing> standing() {
        GeoPosition position = Marks.position(site.getLatitudeDeg(), site.getLongitudeDeg());
        double span = Optional.ofNullable(session.event().getPolicies())
                .map(Policies::getStationSpanM).orElse(0.0);
        try {
            return position == null ? Optional.empty()
                    : Optional.of(Standing.of(position, site.getMarkErrorM(), span));
        } catch (IllegalArgumentException impossibleLengths) {
            return Optional.empty();
        }
    }

    /** One line: kind, squares, how far the line or corner is, and whether that is the claim. */
    String words() {
        return standing().map(standing -> fits(standing) ? TEXTS.text("squareClaim.claimed", "standing", words(standing))
                : TEXTS.text("squareClaim.differs", "standing", words(standing))).orElse(TEXTS.text("squareClaim.nomark"));
    }

    static String words(Standing standing) {
        String kind = Naming.of(kind(standing.kind()));
        String squares = String.join(" ", names(standing));
        return standing.boundary().map(near -> TEXTS.text("squareClaim.near", "kind", kind, "squares", squares,
                "distance", near.distanceM())).orElse(TEXTS.text("squareClaim.inside", "kind", kind, "squares", squares));
    }

    boolean differs() {
        return standing().filter(standing -> !fits(standing)).isPresent();
    }

    void takeOver() {
        standing().ifPresent(standing -> session.execute(takeOver(standing)));
    }

    private Command takeOver(Standing standing) {
        return Edit.together(TEXTS.text("squareClaim.undo"), List.of(
                Edit.set(session.editingDomain(), site, Literals.SITE__KIND, kind(standing.kind())),
                Edit.set(session.editingDomain(), site, Literals.SITE__SQUARES, names(standing))));
    }

    private boolean fits(Standing standing) {
        return site.getKind() == kind(standing.kind())
                && List.copyOf(new TreeSet<>(site.getSquares())).equals(names(standing));
    }

    private static List<String> names(Standing standing) {
        return standing.squares().stream().map(Square::name).sorted().toList();
    }

    private static SiteKind kind(Standing.Kind kind) {
        return switch (kind) {
            case INSIDE -> SiteKind.INSIDE;
            case LINE -> SiteKind.LINE;
            case CORNER -> SiteKind.CORNER;
        };
    }
}
