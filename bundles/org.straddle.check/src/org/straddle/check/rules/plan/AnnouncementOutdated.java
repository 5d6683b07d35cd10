package org.straddle.check.rules.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.straddle.check.Finding;
import org.straddle.check.Promise;
import org.straddle.check.Promises;
import org.straddle.check.Severity;
import org.straddle.check.rules.NamedRule;
import org.straddle.check.rules.Words;
import org.straddle.model.Event;
import org.straddle.model.Revision;
import org.straddle.outlook.Outlook;

/** Chasers go by what was published last; a plan that moved since must be published anew. */
public final class AnnouncementOutdated extends NamedRule {

    private static final int NAMED = 3;

    public AnnouncementOutdated() {
        super("announcement-outdated", Severity.WARNING, "The announcement tells what is planned");
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
                .ifPresent(last -> findings.accept(Finding.of(this, "Revision " + last.getNumber()
                        + " of the announcement" + (last.getAt() == null ? ""
                                : ", " + new Words(outlook.zone()).at(last.getAt()) + ",")
                        + " is out of date: " + changes(now, last) + ". Publish the next revision.", event)
                        .restingOn(now.facts(), last.getFacts())));
    }

    private static String changes(Promises now, Revision last) {
        Promises.Change change = now.since(Promises.of(last));
        List<String> parts = new ArrayList<>();
        tell(parts, change.dropped(), "no longer");
        tell(parts, change.added(), "new");
        return parts.isEmpty() ? "its heading or its words to chasers changed" : String.join("; ", parts);
    }

    private static void tell(List<String> parts, List<Promise> promises, String how) {
        if (!promises.isEmpty()) {
            int more = promises.size() - NAMED;
            parts.add(how + ": "
                    + promises.stream().limit(NAMED).map(Promise::line).collect(Collectors.joining(" / "))
                    + (more > 0 ? " and " + more + " more" : ""));
        }
    }
}
