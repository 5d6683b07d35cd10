package org.straddle.daysheet.edit;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Turn;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/** Puts a turn into a stop from a start to an end: moves it, stretches it, or hands it over with another team's stop. */
public record PlaceTurn(String turnId, String stopId, Window window) implements SheetEdit {

    private static final Catalogue TEXTS = Catalogue.of(PlaceTurn.class);

    @Override
    public Command command(EditingDomain domain, Event live) throws RefusedEdit {
        LivePlan plan = new LivePlan(live);
        Turn turn = plan.turn(turnId);
        Stop from = LivePlan.stopOf(turn);
        Stop to = plan.stop(stopId);
        LivePlan.needLoose(turn);
        CompoundCommand all = new CompoundCommand(label(turn, from, to));
        if (from != to) {
            // Adding alone would take it out of its stop too, but undo would not bring it back there.
            all.append(RemoveCommand.create(domain, from, Literals.STOP__TURNS, turn));
            all.append(AddCommand.create(domain, to, Literals.STOP__TURNS, turn));
        }
        all.append(SetCommand.create(domain, turn, Literals.TURN__START, window.start()));
        all.append(SetCommand.create(domain, turn, Literals.TURN__END, window.end()));
        return all;
    }

    private String label(Turn turn, Stop from, Stop to) {
        boolean stretched = from == to
                && (window.start().equals(turn.getStart()) || window.end().equals(turn.getEnd()));
        return from.getTeam() != to.getTeam() ? TEXTS.text("handOver.turn", "bird", bird(turn))
                : TEXTS.text("place.turn", "stretched", stretched, "bird", bird(turn));
    }

    static String bird(Turn turn) {
        return turn.getBird() == null ? TEXTS.text("nobird") : LivePlan.words(turn.getBird());
    }
}
