package org.straddle.check.rules;

import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.grid.Square;
import org.straddle.model.Site;
import org.straddle.outlook.Outlook;

/** A name that is no square is left out of all that is computed. */
final class SquareNamedWrong extends NamedRule {

    SquareNamedWrong() {
        super("square-named-wrong", Severity.WARNING, "Squares are named by four characters");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        for (Site site : outlook.event().getSites()) {
            List<String> wrong = site.getSquares().stream().filter(name -> !isSquare(name))
                    .map(name -> "\"" + name + "\"").toList();
            if (!wrong.isEmpty()) {
                findings.accept(Finding.of(this, Words.sentence(Words.name(site)) + " claims " + Words.list(wrong)
                        + ", which " + (wrong.size() == 1 ? "is no square" : "are no squares")
                        + ": write two letters A to R and two digits.", site));
            }
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
