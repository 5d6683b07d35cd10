package org.straddle.check.rules;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Site;
import org.straddle.outlook.Outlook;

/** A stop at a site that claims no square gives chasers nothing. */
final class SiteWithoutSquares extends NamedRule {

    SiteWithoutSquares() {
        super("site-without-squares", Severity.WARNING, "A used site claims a square");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        for (Map.Entry<Site, List<Stay>> used : Itinerary.of(outlook.event()).bySite().entrySet()) {
            if (outlook.squares(used.getKey()).isEmpty()) {
                findings.accept(Finding.of(this, Words.sentence(Words.name(used.getKey()))
                        + " is in the plan but claims no square.", used.getKey())
                        .at(used.getValue().get(0).window().start()));
            }
        }
    }
}
