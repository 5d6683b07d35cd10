package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Site;
import org.straddle.outlook.Outlook;

/** Latitude and longitude 0 are what a new site starts with. */
final class PositionNotEntered extends NamedRule {

    PositionNotEntered() {
        super("position-not-entered", Severity.WARNING, "Every site has its position");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        for (Site site : outlook.event().getSites()) {
            if (site.getLatitudeDeg() == 0 && site.getLongitudeDeg() == 0) {
                findings.accept(Finding.of(this, Words.sentence(Words.name(site))
                        + " is at latitude 0, longitude 0: its position seems not to be entered.", site));
            }
        }
    }
}
