package org.straddle.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.straddle.check.Checks;
import org.straddle.check.Finding;
import org.straddle.model.Event;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.Outlook;

/** Published states number themselves, and a plan that moved since is told of. */
class NextRevisionTest {

    private final Sketch sketch = new Sketch();
    private final Event event = sketch.event;
    private final EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(),
            new BasicCommandStack());

    private NextRevision next() {
        return NextRevision.of(Outlook.of(event, null));
    }

    private void publish() {
        domain.getCommandStack().execute(next().record(domain, event, Instant.parse("2031-06-01T10:00:00Z")));
    }

    private List<String> stale() {
        return Checks.standard().run(Outlook.of(event, null), null).stream()
                .filter(finding -> finding.rule().equals("announcement-outdated")).map(Finding::sentence).toList();
    }

    @Test
    void aMovedTurnMakesTheNextRevision() {
        sketch.turn(sketch.stop(sketch.second, sketch.line, "20T12:00", "20T14:00"), "20T12:40:20", "20T12:49:50");
        assertEquals(1, next().number());
        assertEquals(List.of(), stale());
        publish();
        assertEquals(1, next().number());
        assertFalse(next().isNew());
        publish();
        assertEquals(1, event.getRevisions().size());
        assertEquals(List.of(), stale());

        event.getPlan().getStops().get(0).getTurns().remove(0);
        assertEquals(2, next().number());
        assertTrue(stale().get(0).startsWith("Revision 1 of the announcement"), stale().toString());
        assertTrue(stale().get(0).contains("no longer: "), stale().toString());
        publish();
        assertEquals(List.of(), stale());

        domain.getCommandStack().undo();
        assertEquals(1, stale().size());
    }
}
