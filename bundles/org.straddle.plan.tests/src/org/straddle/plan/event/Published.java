package org.straddle.plan.event;

import java.time.Instant;
import java.util.List;

import org.straddle.check.Promise;
import org.straddle.check.Promises;
import org.straddle.model.Event;
import org.straddle.model.Revision;
import org.straddle.model.StraddleFactory;
import org.straddle.outlook.Outlook;

/** Publishes the plan of an event, as far as the event remembers it. */
final class Published {

    private Published() {
    }

    static List<Promise> now(Event event) {
        Promises promises = Promises.of(Outlook.of(event, null));
        Revision revision = StraddleFactory.eINSTANCE.createRevision();
        revision.setNumber(1 + event.getRevisions().size());
        revision.setAt(Instant.parse("2031-06-01T10:00:00Z"));
        revision.setFacts(promises.facts());
        promises.all().forEach(promise -> revision.getPromises().add(promise.written()));
        event.getRevisions().add(revision);
        return Promises.of(revision);
    }
}
