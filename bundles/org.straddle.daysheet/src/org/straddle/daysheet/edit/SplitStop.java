package org.straddle.daysheet.edit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Turn;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/**
 * Makes two stops of one, the second from a moment on, so that the second can be moved or handed over by itself. Turns
 * go with the part that they lie in.
 */
public record SplitStop(String stopId, Instant at) implements SheetEdit {

    private static final Catalogue TEXTS = Catalogue.of(SplitStop.class);

    @Override
    public Command command(EditingDomain domain, Event live) throws RefusedEdit {
        Stop stop = new LivePlan(live).stop(stopId);
        LivePlan.needLoose(stop);
        if (stop.getArrival() == null || stop.getDeparture() == null || !stop.getArrival().isBefore(at)
                || !at.isBefore(stop.getDeparture())) {
            throw new RefusedEdit(TEXTS.text("splitStop.outside", "time", TimeText.zulu(at),
                    "stop", LivePlan.words(stop)));
        }
        List<Turn> later = later(stop);
        Stop second = Fresh.stop(stop.getTeam(), stop.getSite(), at, stop.getDeparture());
        CompoundCommand all = new CompoundCommand(TEXTS.text("splitStop", "site", PlaceStop.site(stop)));
        all.append(SetCommand.create(domain, stop, Literals.STOP__DEPARTURE, at));
        if (!later.isEmpty()) {
            all.append(RemoveCommand.create(domain, stop, Literals.STOP__TURNS, later));
        }
        all.append(AddCommand.create(domain, live.getPlan(), Literals.PLAN__STOPS, second));
        if (!later.isEmpty()) {
            all.append(AddCommand.create(domain, second, Literals.STOP__TURNS, later));
        }
        return all;
    }

    private List<Turn> later(Stop stop) throws RefusedEdit {
        List<Turn> later = new ArrayList<>();
        for (Turn turn : stop.getTurns()) {
            boolean after = turn.getStart() != null && !turn.getStart().isBefore(at);
            boolean before = turn.getEnd() == null || !turn.getEnd().isAfter(at);
            if (!after && !before) {
                throw new RefusedEdit(TEXTS.text("splitStop.turn", "turn", LivePlan.words(turn),
                        "time", TimeText.zulu(at)));
            }
            if (after) {
                later.add(turn);
            }
        }
        return later;
    }
}
