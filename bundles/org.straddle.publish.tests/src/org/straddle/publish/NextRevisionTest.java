package org.straddle.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.straddle.check.Finding;
import org.straddle.check.run.Checks;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
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

    @Test
    void aNumberThatIsOutStaysWithItsSchedule() {
        sketch.turn(sketch.stop(sketch.second, sketch.line, "20T12:00", "20T14:00"), "20T12:40:20", "20T12:49:50");
        assertTrue(next().whyNot(0).isPresent());
        publish();
        assertEquals(Optional.empty(), next().whyNot(1), "the same once more");
        assertEquals(Optional.empty(), next().whyNot(7));
        event.getPlan().getStops().get(0).getTurns().remove(0);
        assertTrue(next().whyNot(1).orElseThrow().contains("Give 2 or more"));
        assertEquals(Optional.empty(), next().whyNot(2));
    }

    /** Chasers who have the revision before read what they can no longer rely on. */
    @Test
    void theAnnouncementSaysWhatChanged() {
        var stop = sketch.stop(sketch.second, sketch.line, "20T12:00", "20T14:00");
        sketch.turn(stop, "20T12:40:20", "20T12:49:50");
        sketch.turn(stop, "20T13:10:20", "20T13:19:50");
        assertFalse(announcement(1).contains("CHANGES"));
        publish();
        stop.getTurns().remove(0);
        sketch.turn(stop, "20T13:30:20", "20T13:39:50");
        String second = announcement(2);
        assertTrue(second.contains("CHANGES SINCE REVISION 1"), second);
        assertEquals(1, second.lines().filter(line -> line.startsWith("no longer: 2031-06-20 12:40–12:50 UTC")).count(), second);
        assertEquals(1, second.lines().filter(line -> line.startsWith("new: 2031-06-20 13:30–13:40 UTC")).count(), second);
        assertEquals(2, second.lines().filter(line -> line.startsWith("no longer: ") || line.startsWith("new: ")).count(), second);
        publish();
        assertEquals(second, announcement(2), "printed once more");
        assertTrue(announcement(3).contains("The schedule is the same."));
    }

    /** A frequency that comes later is one line, not a schedule that is new from end to end. */
    @Test
    void anotherFrequencyIsSaidAsSuch() {
        var stop = sketch.stop(sketch.second, sketch.line, "20T12:00", "20T14:00");
        sketch.turn(stop, "20T12:40:20", "20T12:49:50");
        var bird = sketch.turn(stop, "20T13:10:20", "20T13:19:50").getBird();
        bird.setDownlink(null);
        publish();
        bird.setDownlink(Fresh.link(437.2, 437.2));
        assertTrue(stale().get(0).contains("now on ") && stale().get(0).contains("437.2 MHz in 2 turns"), stale().toString());
        String second = announcement(2);
        assertEquals(1, second.lines().filter(line -> line.startsWith("frequency: ") && line.contains("437.2 MHz, 2 turns")).count(), second);
        assertFalse(second.contains("no longer: ") || second.contains("new: "), second);
        assertFalse(second.contains("The schedule is the same."), second);
    }

    private String announcement(int revision) {
        return Publication.of(Outlook.of(event, null), List.of(),
                new PublicationSettings(revision, Instant.parse("2031-06-01T10:00:00Z"))).sheets().get(1).text();
    }
}
