package org.straddle.plan.event;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.straddle.model.Ban;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Snapshot;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.plan.Banning;
import org.straddle.plan.Pinning;

/** Pins and bans as commands: what they set, and that one undo takes it back. */
class PinningTest {

    private final EditingDomain domain =
            new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());
    private final Event event = Fresh.event("Pins");
    private final Team team = Fresh.team();
    private final Stop first = stop();
    private final Stop second = stop();

    {
        event.getTeams().add(team);
        second.setPinned(true);
    }

    private Stop stop() {
        Stop stop = Fresh.stop();
        stop.getTurns().addAll(List.of(Fresh.turn(), Fresh.turn()));
        event.getPlan().getStops().add(stop);
        return stop;
    }

    /** Stops and their turns; capitals are pinned. */
    private String pins() {
        StringBuilder pins = new StringBuilder();
        event.getPlan().getStops().forEach(stop -> {
            pins.append(stop.isPinned() ? 'S' : 's');
            stop.getTurns().forEach(turn -> pins.append(turn.isPinned() ? 'T' : 't'));
        });
        return pins.toString();
    }

    private String after(Command command) {
        Event before = Snapshot.of(event);
        domain.getCommandStack().execute(command);
        String pins = pins();
        if (domain.getCommandStack().canUndo()) {
            domain.getCommandStack().undo();
        }
        assertTrue(EcoreUtil.equals(before, event), "one undo takes it back");
        return pins;
    }

    @Test
    void stopsAndTurnsArePinnedAndLetGo() {
        assertEquals("sttStt", pins());
        assertEquals("SttStT", after(Pinning.pin(domain, List.of(first, second, second.getTurns().get(1)))));
        assertEquals("STTSTT", after(Pinning.pinWhole(domain, List.of(first, second))));
        assertEquals("sttstt", after(Pinning.unpinWhole(domain, List.of(first, second))));
        assertEquals("sttStt", after(Pinning.unpin(domain, List.of(first))), "it was not pinned");
    }

    @Test
    void bansComeAndGo() {
        Ban ban = Fresh.ban();
        ban.setTeam(team);
        domain.getCommandStack().execute(Banning.add(domain, event, List.of(ban)));
        assertEquals(List.of(ban), Banning.naming(event, team));
        domain.getCommandStack().execute(Banning.remove(domain, event, List.of(ban)));
        assertEquals(List.of(), Banning.naming(event, team));
        domain.getCommandStack().undo();
        domain.getCommandStack().undo();
        assertEquals(List.of(), event.getPlan().getBans());
        event.setPlan(null);
        domain.getCommandStack().execute(Banning.add(domain, event, List.of(ban)));
        assertEquals(List.of(ban), event.getPlan().getBans(), "an event without a plan gets one");
    }
}
