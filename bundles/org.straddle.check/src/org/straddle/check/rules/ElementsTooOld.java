package org.straddle.check.rules;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.model.Bird;
import org.straddle.outlook.Outlook;

/** The farther a pass is from the epoch of its element set, the farther the bird may be from where it is looked for. */
final class ElementsTooOld extends NamedRule {

    ElementsTooOld() {
        super("elements-too-old", Severity.WARNING, "Element sets are fresh");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        if (!outlook.hasSpan()) {
            return;
        }
        Words words = new Words(outlook.zone());
        Map<Bird, List<Work>> worked = Itinerary.of(outlook.event()).byBird();
        Duration limit = outlook.policies().elementSetAgeLimit();
        for (Bird bird : outlook.event().getBirds()) {
            List<Instant> wanted = worked.containsKey(bird)
                    ? worked.get(bird).stream().map(work -> work.window().start()).toList()
                    : List.of(outlook.span().start(), outlook.span().end());
            wanted.stream().max(Comparator.comparing(instant -> age(outlook, bird, instant)))
                    .filter(instant -> age(outlook, bird, instant).compareTo(limit) > 0)
                    .ifPresent(instant -> {
                        Finding finding = Finding.of(this, "The element set of " + Words.name(bird) + " of "
                                + words.at(outlook.elementSet(bird, instant).orElseThrow().epoch()) + " is "
                                + Words.days(age(outlook, bird, instant)) + " away from "
                                + (worked.containsKey(bird) ? "the turn " : "the event, ") + words.at(instant)
                                + "; the limit of this event is " + Words.days(limit)
                                + ". Import a newer one.", bird);
                        findings.accept(worked.containsKey(bird) ? finding.at(instant)
                                : finding.weighing(Severity.ADVICE));
                    });
        }
    }

    private static Duration age(Outlook outlook, Bird bird, Instant instant) {
        return outlook.elementSet(bird, instant).map(set -> set.ageAt(instant).abs()).orElse(Duration.ZERO);
    }
}
