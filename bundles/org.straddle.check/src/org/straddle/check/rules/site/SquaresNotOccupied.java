package org.straddle.check.rules.site;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.straddle.check.Fact;
import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Fix;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.ChangeSite;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
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
        super(Scope.SITE, CheckRule.SQUARES_NOT_OCCUPIED.id(), Severity.BLOCKER);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        Outlook outlook = in.outlook();
        if (outlook.isPlaced(site) && !outlook.squares(site).isEmpty()) {
            doubt(outlook, site).ifPresent(doubt -> {
                Finding finding = Finding.of(this, Statement.of("squaresNotOccupied.claims", "site", site,
                        "squares", outlook.squares(site), "doubt", doubt), site)
                        .restingOn(outlook.position(site), site.getMarkErrorM(), outlook.policies().stationSpanM());
                Finding weighed = in.itinerary().at(site).isEmpty() ? finding.weighing(Severity.WARNING) : finding;
                findings.accept(fewer(outlook, site).map(weighed::fixedBy).orElse(weighed));
            });
        }
    }

    private static Optional<Statement> doubt(Outlook outlook, Site site) {
        double errorM = site.getMarkErrorM();
        if (!(errorM >= 0) || !Double.isFinite(errorM)) {
            return Optional.of(Statement.of("squaresNotOccupied.butErrorIts", "errorM", errorM));
        }
        Set<Square> claimed = outlook.squares(site);
        if (claimed.size() > 1 && !Squares.meet(claimed)) {
            return Optional.of(Statement.of("squaresNotOccupied.whichDoNot"));
        }
        Optional<PresenceArgument> argument = outlook.argument(site);
        if (argument.isEmpty()) {
            return Optional.of(Statement.of("squaresNotOccupied.butItsMark", "claimed", claimed.size()));
        }
        return argument.filter(made -> !made.suffices()).map(made -> Statement.of("squaresNotOccupied.butStationMark",
                "metres", metres(outlook.policies().stationSpanM()), "metres2", metres(errorM),
                "claimed", claimed.size(), "percent", PresenceArgument.percent(made.presence().least()),
                "percent2", PresenceArgument.percent(made.level()), "whatLifts", Fact.told(made.whatLifts())));
    }

    /** A claim of those squares that the station does occupy from its mark, when that can be argued. */
    private static Optional<Fix> fewer(Outlook outlook, Site site) {
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
                        Statement.of("squaresNotOccupied.claimInstead",
                                "sorted", squares.stream().sorted().toList()), site));
    }

    private static Statement metres(double length) {
        return Statement.of("squaresNotOccupied.metres", "length", length);
    }
}
