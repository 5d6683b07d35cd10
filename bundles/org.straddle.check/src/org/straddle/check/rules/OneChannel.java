package org.straddle.check.rules;

import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Access;
import org.straddle.outlook.Outlook;

/** A single-channel bird has one uplink for all in its footprint: two teams that both see it talk over each other. */
final class OneChannel extends NamedRule {

    OneChannel() {
        super("one-channel", Severity.BLOCKER, "One team on a single channel at a time");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        Itinerary.of(outlook.event()).byBird().forEach((bird, turns) -> {
            if (bird.getAccess() == Access.SINGLE_CHANNEL) {
                Overlaps.pairs(turns, Work::window, (a, b) -> SharedTurns.of(outlook, a, b).ifPresent(shared ->
                        findings.accept(Finding.of(this, Words.sentence(Words.name(a.team())) + " at "
                                + Words.name(a.site()) + " and " + Words.name(b.team()) + " at " + Words.name(b.site())
                                + " would use the one channel of " + Words.name(bird) + " at the same time, "
                                + words.during(shared) + ".", a.turn(), b.turn()).at(shared.start())
                                .mendedBy(RemoveTurns.of(b.turn().isPinned() ? a : b)))));
            }
        });
    }
}
