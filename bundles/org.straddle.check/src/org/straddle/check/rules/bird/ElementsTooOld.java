package org.straddle.check.rules.bird;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;

import org.straddle.check.Fact;
import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.Inspection;
import org.straddle.check.rules.Scope;
import org.straddle.check.rules.ScopedRule;
import org.straddle.model.Bird;
import org.straddle.outlook.ElementAge;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Work;

/** The farther a pass is from the epoch of its element set, the farther the bird may be from where it is looked for. */
public final class ElementsTooOld extends ScopedRule<Bird> {

    public ElementsTooOld() {
        super(Scope.BIRD, CheckRule.ELEMENTS_TOO_OLD.id(), Severity.WARNING);
    }

    @Override
    public void check(Bird bird, Inspection in, Consumer<Finding> findings) {
        Outlook outlook = in.outlook();
        if (!outlook.hasSpan()) {
            return;
        }
        List<Work> turns = in.itinerary().on(bird);
        List<Instant> wanted = turns.isEmpty() ? List.of(outlook.span().start(), outlook.span().end())
                : turns.stream().map(work -> work.window().start()).toList();
        wanted.stream().max(Comparator.comparing(instant -> ElementAge.of(outlook, bird, instant)))
                .filter(instant -> ElementAge.isTooOld(outlook, bird, instant))
                .ifPresent(instant -> {
                    Finding finding = Finding.of(this, Statement.of("elementsTooOld.elementSetAway", "bird", bird,
                            "epoch", outlook.elementSet(bird, instant).orElseThrow().epoch(),
                            "days", Fact.days(ElementAge.of(outlook, bird, instant)), "isEmpty", turns.isEmpty(),
                            "instant", instant, "days2", Fact.days(ElementAge.limit(outlook, bird, instant)),
                            "low", ElementAge.isLow(outlook, bird, instant)), bird);
                    findings.accept(turns.isEmpty() ? finding.weighing(Severity.ADVICE) : finding.at(instant));
                });
    }
}
