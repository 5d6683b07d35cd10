package org.straddle.check.rules.site;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.check.Mend;
import org.straddle.check.Severity;
import org.straddle.check.mend.ChangeSite;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.rules.Words;
import org.straddle.grid.Square;
import org.straddle.grid.Squares;
import org.straddle.grid.Standing;
import org.straddle.model.Site;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.PresenceArgument;

/** The claim is valid only if it can be argued that the station stands in every square, given the error of the mark. */
public final class SquaresNotOccupied extends ScopedRule<Site> {

    /** Beyond this a mark says nothing of squares. */
    private static final double FARTHEST_M = 10_000;

    public SquaresNotOccupied() {
        super(Scope.SITE, "squares-not-occupied", Severity.BLOCKER, "A station occupies the squares it claims");
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        Outlook outlook = in.outlook();
        if (outlook.isPlaced(site) && !outlook.squares(site).isEmpty()) {
            doubt(outlook, site).ifPresent(doubt -> {
                Finding finding = Finding.of(this, Words.sentence(Words.name(site)) + " claims "
                        + Words.list(outlook.squares(site)) + ", " + doubt, site)
                        .restingOn(outlook.position(site), site.getMarkErrorM(), outlook.policies().stationSpanM());
                Finding weighed = in.itinerary().at(site).isEmpty() ? finding.weighing(Severity.WARNING) : finding;
                findings.accept(fewer(outlook, site).map(weighed::mendedBy).orElse(weighed));
            });
        }
    }

    private static Optional<String> doubt(Outlook outlook, Site site) {
        double errorM = site.getMarkErrorM();
        if (!(errorM >= 0) || !Double.isFinite(errorM)) {
            return Optional.of("but the error of its mark, " + errorM + " m, cannot be.");
        }
        Set<Square> claimed = outlook.squares(site);
        if (claimed.size() > 1 && !Squares.meet(claimed)) {
            return Optional.of("which do not meet: a station can claim two squares on a line or four on a corner.");
        }
        Optional<PresenceArgument> argument = outlook.argument(site);
        if (argument.isEmpty()) {
            return Optional.of("but its mark is not " + (claimed.size() == 1 ? "in that square" : "where they meet")
                    + ".");
        }
        return argument.filter(made -> !made.suffices()).map(made -> "but a station of "
                + metres(outlook.policies().stationSpanM()) + " on a mark good to " + metres(errorM)
                + " occupies " + (claimed.size() == 1 ? "it" : "all of them") + " with a probability of "
                + PresenceArgument.percent(made.presence().least()) + " only; this event asks for "
                + PresenceArgument.percent(made.level()) + ". " + made.whatLifts());
    }

    /** A claim of those squares that the station does occupy from its mark, when that can be argued. */
    private static Optional<Mend> fewer(Outlook outlook, Site site) {
        double errorM = site.getMarkErrorM();
        if (!(errorM >= 0) || errorM > FARTHEST_M) {
            return Optional.empty();
        }
        double spanM = Math.min(outlook.policies().stationSpanM(), FARTHEST_M);
        Set<Square> occupied = Set.copyOf(Standing.of(outlook.position(site), errorM, spanM).squares());
        Set<Square> one = Set.of(Square.of(outlook.position(site)));
        return Stream.of(occupied, one).filter(squares -> !squares.equals(outlook.squares(site)))
                .filter(squares -> outlook.argument(site, squares).filter(PresenceArgument::suffices).isPresent())
                .findFirst().map(squares -> ChangeSite.claiming(squares.stream().sorted().map(Square::name).toList(),
                        "Claim " + Words.list(squares.stream().sorted().toList()) + " instead", site));
    }

    private static String metres(double length) {
        return String.format(Locale.ENGLISH, "%.0f m", length);
    }
}
