package org.straddle.daysheet.edit;

import java.time.Instant;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/**
 * Gives a stop to a team from an arrival to a departure: moves it, stretches it, or hands it over.
 *
 * <p>Its turns stay where they are, because passes do not move with a stop. Those that would lie wholly outside the
 * stop leave the plan in the same step; one that would stick out stays, and is for the findings to tell.
 */
public record PlaceStop(String stopId, String teamId, Window window) implements SheetEdit {

    private static final Catalogue TEXTS = Catalogue.of(PlaceStop.class);

    /** The turns that lie wholly outside a window, of those that have usable times. */
    public static List<Turn> leaving(Stop stop, Window window) {
        return stop.getTurns().stream().filter(turn -> isTimed(turn.getStart(), turn.getEnd())
                && !new Window(turn.getStart(), turn.getEnd()).overlaps(window)).toList();
    }

    @Override
    public Command command(EditingDomain domain, Event live) throws RefusedEdit {
        LivePlan plan = new LivePlan(live);
        Stop stop = plan.stop(stopId);
        Team team = plan.team(teamId);
        List<Turn> leaving = leaving(stop, window);
        LivePlan.needLoose(stop);
        LivePlan.needLoose(team == stop.getTeam() ? leaving : stop.getTurns());
        CompoundCommand all = new CompoundCommand(label(stop, team));
        all.append(SetCommand.create(domain, stop, Literals.STOP__ARRIVAL, window.start()));
        all.append(SetCommand.create(domain, stop, Literals.STOP__DEPARTURE, window.end()));
        if (team != stop.getTeam()) {
            all.append(SetCommand.create(domain, stop, Literals.STOP__TEAM, team));
        }
        if (!leaving.isEmpty()) {
            all.append(RemoveCommand.create(domain, stop, Literals.STOP__TURNS, leaving));
        }
        return all;
    }

    private String label(Stop stop, Team team) {
        boolean stays = window.start().equals(stop.getArrival()) || window.end().equals(stop.getDeparture());
        return team != stop.getTeam() ? TEXTS.text("handOver.stop", "site", site(stop))
                : TEXTS.text("place.stop", "stretched", stays, "site", site(stop));
    }

    static String site(Stop stop) {
        return stop.getSite() == null ? TEXTS.text("nosite") : LivePlan.words(stop.getSite());
    }

    private static boolean isTimed(Instant start, Instant end) {
        return start != null && end != null && start.isBefore(end);
    }
}
