package org.straddle.daysheet.edit;

import java.time.Instant;
import java.util.UUID;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Event;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Turn;
import org.straddle.outlook.PolicyFigures;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/**
 * Makes two turns of one pass, so that two teams can share it: the first ends at a moment, the second begins after the
 * gap that the event's policy asks for between two turns of one team.
 */
public record SplitTurn(String turnId, Instant at) implements SheetEdit {

    private static final Catalogue TEXTS = Catalogue.of(SplitTurn.class);

    @Override
    public Command command(EditingDomain domain, Event live) throws RefusedEdit {
        Turn turn = new LivePlan(live).turn(turnId);
        LivePlan.needLoose(turn);
        Instant again = at.plus(PolicyFigures.of(live.getPolicies()).turnGap());
        if (turn.getStart() == null || turn.getEnd() == null || !turn.getStart().isBefore(at)
                || !again.isBefore(turn.getEnd())) {
            throw new RefusedEdit(TEXTS.text("splitTurn.room", "turn", LivePlan.words(turn),
                    "time", TimeText.zulu(at)));
        }
        Turn second = EcoreUtil.copy(turn);
        second.setId(UUID.randomUUID().toString());
        second.setStart(again);
        CompoundCommand all = new CompoundCommand(TEXTS.text("splitTurn", "bird", PlaceTurn.bird(turn)));
        all.append(SetCommand.create(domain, turn, Literals.TURN__END, at));
        all.append(AddCommand.create(domain, LivePlan.stopOf(turn), Literals.STOP__TURNS, second));
        return all;
    }
}
