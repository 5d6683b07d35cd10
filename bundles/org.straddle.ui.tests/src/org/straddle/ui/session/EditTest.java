package org.straddle.ui.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.straddle.model.Ban;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Operator;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;

class EditTest {

    private final Event event = Fresh.event("Ridge rove");
    private final EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(),
            new BasicCommandStack());
    private final Team north = team();
    private final Team south = team();
    private final Site quay = site();
    private final Bird tern = bird();

    @Test
    void deletingATeamTakesItsStopsAndUndoBringsThemBack() {
        Stop gone = stop(north, quay, tern);
        Stop stays = stop(south, quay, tern);
        Event before = EcoreUtil.copy(event);
        run(Edit.delete(domain, event, List.of(north), "team"));
        assertEquals(List.of(south), event.getTeams());
        assertEquals(List.of(stays), event.getPlan().getStops());
        domain.getCommandStack().undo();
        assertTrue(EcoreUtil.equals(before, event));
        assertSame(gone, event.getPlan().getStops().get(0));
    }

    @Test
    void deletingABirdTakesItsTurnsOnly() {
        Bird other = bird();
        Stop stop = stop(north, quay, tern);
        stop.getTurns().add(turn(other));
        run(Edit.delete(domain, event, List.of(tern), "bird"));
        assertEquals(List.of(other), stop.getTurns().stream().map(Turn::getBird).toList());
    }

    /** Without its site it would ban everything in its period. */
    @Test
    void deletingASiteTakesTheBansOnIt() {
        Ban ban = Fresh.ban();
        ban.setSite(quay);
        ban.setFrom(Instant.parse("2031-06-21T10:00:00Z"));
        Ban other = Fresh.ban();
        other.setTeam(north);
        event.getPlan().getBans().addAll(List.of(ban, other));
        run(Edit.delete(domain, event, List.of(quay), "site"));
        assertEquals(List.of(other), event.getPlan().getBans());
        domain.getCommandStack().undo();
        assertSame(quay, event.getPlan().getBans().get(0).getSite());
    }

    @Test
    void deletingAnOperatorClearsWhatPointsThere() {
        Operator wren = Fresh.operator();
        event.getOperators().add(wren);
        north.getOperators().add(wren);
        run(Edit.delete(domain, event, List.of(wren), "operator"));
        assertTrue(north.getOperators().isEmpty());
        domain.getCommandStack().undo();
        assertEquals(List.of(wren), north.getOperators());
    }

    @Test
    void aStopAndItsTeamCanBeDeletedTogether() {
        Stop stop = stop(north, quay, tern);
        run(Edit.delete(domain, event, List.of(stop.getTurns().get(0), stop, north), "things"));
        assertTrue(event.getPlan().getStops().isEmpty());
        domain.getCommandStack().undo();
        assertEquals(1, event.getPlan().getStops().get(0).getTurns().size());
    }

    @Test
    void labelsTellWhatChanges() {
        assertEquals("Change mark error", Edit.set(domain, quay, Literals.SITE__MARK_ERROR_M, 3.0).getLabel());
        assertEquals("gap between turns", Naming.feature(Literals.POLICIES__TURN_GAP_MINUTES));
        assertEquals("road speed", Naming.feature(Literals.VISIT__ROAD_SPEED_KMH));
        assertEquals("element sets", Naming.feature(Literals.BIRD__ELEMENT_SETS));
    }

    private void run(Command command) {
        assertTrue(command.canExecute());
        domain.getCommandStack().execute(command);
    }

    private Team team() {
        Team team = Fresh.team();
        event.getTeams().add(team);
        return team;
    }

    private Site site() {
        Site site = Fresh.site();
        event.getSites().add(site);
        return site;
    }

    private Bird bird() {
        Bird bird = Fresh.bird();
        event.getBirds().add(bird);
        return bird;
    }

    private Stop stop(Team team, Site site, Bird worked) {
        Stop stop = Fresh.stop();
        stop.setTeam(team);
        stop.setSite(site);
        stop.getTurns().add(turn(worked));
        event.getPlan().getStops().add(stop);
        return stop;
    }

    private static Turn turn(Bird bird) {
        Turn turn = Fresh.turn();
        turn.setBird(bird);
        return turn;
    }
}
