package org.straddle.check.rules.site;

import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.fix.ChangeSite;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.grid.Square;
import org.straddle.model.Site;

/** A name that is no square is left out of all that is computed. */
public final class SquareNamedWrong extends ScopedRule<Site> {

    public SquareNamedWrong() {
        super(Scope.SITE, CheckRule.SQUARE_NAMED_WRONG.id(), Severity.WARNING);
    }

    @Override
    public void check(Site site, Inspection in, Consumer<Finding> findings) {
        List<String> wrong = site.getSquares().stream().filter(name -> !isSquare(name))
                .map(name -> "\"" + name + "\"").toList();
        if (!wrong.isEmpty()) {
            List<String> right = site.getSquares().stream().filter(SquareNamedWrong::isSquare).toList();
            findings.accept(Finding.of(this, Statement.of("squareNamedWrong.claimsWhichWrong", "site", site,
                    "wrong", wrong, "wrong2", wrong.size()), site)
                    .fixedBy(ChangeSite.claiming(right, Statement.of("squareNamedWrong.takeOutWhat"), site)));
        }
    }

    private static boolean isSquare(String name) {
        try {
            return name != null && Square.parse(name) != null;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
