package org.straddle.check.rules.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Promise;
import org.straddle.check.Promises;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.NamedRule;
import org.straddle.model.Event;
import org.straddle.model.Revision;
import org.straddle.outlook.Outlook;

/** Chasers go by what was published last; a plan that moved since must be published anew. */
public final class AnnouncementOutdated extends NamedRule {

    private static final int NAMED = 3;

    public AnnouncementOutdated() {
        super(CheckRule.ANNOUNCEMENT_OUTDATED.id(), Severity.WARNING);
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Event event = outlook.event();
        Optional<Revision> published = Promises.last(event);
        if (published.isEmpty()) {
            return;
        }
        Promises now = Promises.of(outlook);
        published.filter(last -> !now.facts().equals(last.getFacts()))
                .ifPresent(last -> findings.accept(Finding.of(this, Statement.of("announcementOutdated.revisionAnnouncementOut", "number", last.getNumber(), "dated", last.getAt() != null, "at", last.getAt() == null ? "" : last.getAt(), "changes", changes(now, last)), event)
                        .restingOn(now.facts(), last.getFacts())));
    }

    private static Object changes(Promises now, Revision last) {
        Promises.Change change = now.since(Promises.of(last));
        List<Statement> parts = new ArrayList<>();
        tell(parts, change.dropped(), false);
        tell(parts, change.added(), true);
        change.retuned().forEach(retuned -> parts.add(Statement.of("announcementOutdated.retuned", "bird", retuned.bird(),
                "now", retuned.now(), "turns", retuned.turns())));
        return parts.isEmpty() ? Statement.of("announcementOutdated.itsHeadingIts") : parts;
    }

    private static void tell(List<Statement> parts, List<Promise> promises, boolean isNew) {
        if (!promises.isEmpty()) {
            int more = promises.size() - NAMED;
            parts.add(Statement.of("announcementOutdated.part", "isNew", isNew, "more", Math.max(0, more),
                    "lines", promises.stream().limit(NAMED).map(Promise::line).collect(Collectors.joining(" / "))));
        }
    }
}
