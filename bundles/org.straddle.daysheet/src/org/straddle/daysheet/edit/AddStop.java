package org.straddle.daysheet.edit;

import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Plan;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Turn;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/**
 * Puts a new stop into the plan, with turns in it.
 *
 * @param stopId that the new stop will have
 * @param window from arrival to departure
 */
public record AddStop(String stopId, String teamId, String siteId, Window window, List<Work> turns) implements SheetEdit {

    private static final Catalogue TEXTS = Catalogue.of(AddStop.class);

    /** A turn of the new stop. */
    public record Work(String birdId, Window window) {
    }

    public AddStop {
        turns = List.copyOf(turns);
    }

    public static AddStop of(String teamId, String siteId, Window window, List<Work> turns) {
        return new AddStop(Fresh.stop().getId(), teamId, siteId, window, turns);
    }

    @Override
    public Command command(EditingDomain domain, Event live) throws RefusedEdit {
        LivePlan plan = new LivePlan(live);
        Stop stop = Fresh.stop(plan.team(teamId), plan.site(siteId), window.start(), window.end());
        stop.setId(stopId);
        for (Work work : turns) {
            Turn turn = Fresh.turn(plan.bird(work.birdId), work.window.start(), work.window.end());
            stop.getTurns().add(turn);
        }
        CompoundCommand all = new CompoundCommand(TEXTS.text("addStop", "site", PlaceStop.site(stop)));
        all.append(added(domain, live, stop));
        return all;
    }

    private static Command added(EditingDomain domain, Event live, Stop stop) {
        if (live.getPlan() != null) {
            return AddCommand.create(domain, live.getPlan(), Literals.PLAN__STOPS, stop);
        }
        Plan plan = Fresh.plan();
        plan.getStops().add(stop);
        return SetCommand.create(domain, live, Literals.EVENT__PLAN, plan);
    }
}
