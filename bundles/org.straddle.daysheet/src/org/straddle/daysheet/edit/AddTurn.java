package org.straddle.daysheet.edit;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Turn;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/**
 * Puts a new turn into a stop.
 *
 * @param turnId that the new turn will have
 */
public record AddTurn(String turnId, String stopId, String birdId, Window window) implements SheetEdit {

    private static final Catalogue TEXTS = Catalogue.of(AddTurn.class);

    public static AddTurn of(String stopId, String birdId, Window window) {
        return new AddTurn(Fresh.turn().getId(), stopId, birdId, window);
    }

    @Override
    public Command command(EditingDomain domain, Event live) throws RefusedEdit {
        LivePlan plan = new LivePlan(live);
        Stop stop = plan.stop(stopId);
        Turn turn = Fresh.turn(plan.bird(birdId), window.start(), window.end());
        turn.setId(turnId);
        CompoundCommand all = new CompoundCommand(TEXTS.text("addTurn", "bird", PlaceTurn.bird(turn)));
        all.append(AddCommand.create(domain, stop, Literals.STOP__TURNS, turn));
        return all;
    }
}
