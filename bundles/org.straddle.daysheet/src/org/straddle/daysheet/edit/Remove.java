package org.straddle.daysheet.edit;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Turn;
import org.straddle.words.Catalogue;

/** Takes a stop with its turns, or a turn, out of the plan. */
public record Remove(String id) implements SheetEdit {

    private static final Catalogue TEXTS = Catalogue.of(Remove.class);

    @Override
    public Command command(EditingDomain domain, Event live) throws RefusedEdit {
        LivePlan plan = new LivePlan(live);
        CompoundCommand all;
        if (plan.isStop(id)) {
            Stop stop = plan.stop(id);
            LivePlan.needLoose(stop);
            LivePlan.needLoose(stop.getTurns());
            all = new CompoundCommand(TEXTS.text("remove.stop", "site", PlaceStop.site(stop)));
            all.append(RemoveCommand.create(domain, live.getPlan(), Literals.PLAN__STOPS, stop));
        } else {
            Turn turn = plan.turn(id);
            LivePlan.needLoose(turn);
            all = new CompoundCommand(TEXTS.text("remove.turn", "bird", PlaceTurn.bird(turn)));
            all.append(RemoveCommand.create(domain, LivePlan.stopOf(turn), Literals.STOP__TURNS, turn));
        }
        return all;
    }
}
