package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.kit.PackingList;
import org.straddle.outlook.Outlook;

/** An item without a spare stops a mode of work that the team is to do. */
final class KitWithoutSpare extends NamedRule {

    KitWithoutSpare() {
        super("kit-without-spare", Severity.WARNING, "No single failure ends the work");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        ModesToWork.of(Itinerary.of(outlook.event())).forEach((team, modes) -> PackingList.of(team)
                .singlePoints().stream()
                .filter(point -> point.stops().stream().anyMatch(modes::contains))
                .forEach(point -> findings.accept(Finding.of(this, "In the kit of " + Words.name(team) + ": "
                        + point.sentence(), team, point.item()))));
    }
}
