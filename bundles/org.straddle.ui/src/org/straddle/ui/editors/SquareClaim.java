package org.straddle.ui.editors;

import java.util.List;
import java.util.Locale;
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
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;

/** What the mark of a site allows to claim, told beside what is claimed. */
final class SquareClaim {

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
        return standing().map(standing -> words(standing) + (fits(standing) ? ", as claimed" : "  (differs from the claim)"))
                .orElse("The mark is no position.");
    }

    static String words(Standing standing) {
        return word(standing.kind()) + ": " + String.join(" ", names(standing)) + standing.boundary()
                .map(near -> String.format(Locale.ROOT, "; %.1f m to the %s", near.distanceM(), word(standing.kind()))).orElse("");
    }

    boolean differs() {
        return standing().filter(standing -> !fits(standing)).isPresent();
    }

    void takeOver() {
        standing().ifPresent(standing -> session.execute(takeOver(standing)));
    }

    private Command takeOver(Standing standing) {
        return Edit.together("Take over squares from the mark", List.of(
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

    private static String word(Standing.Kind kind) {
        return kind(kind).getLiteral();
    }
}
