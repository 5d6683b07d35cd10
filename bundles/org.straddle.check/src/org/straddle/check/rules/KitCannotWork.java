package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.kit.PackingList;
import org.straddle.outlook.Outlook;

/** A team is to work a bird in a mode that its kit does not cover. */
final class KitCannotWork extends NamedRule {

    KitCannotWork() {
        super("kit-cannot-work", Severity.WARNING, "The kit of a team can do its work");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        ModesToWork.of(Itinerary.of(outlook.event())).forEach((team, modes) -> PackingList.of(team).modes().stream()
                .filter(cover -> modes.contains(cover.mode()) && !cover.covered())
                .forEach(cover -> findings.accept(Finding.of(this, Words.sentence(Words.name(team))
                        + " is to do work that its kit cannot do. " + cover.sentence(), team)
                        .restingOn(cover.mode()))));
    }
}
