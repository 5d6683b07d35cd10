package org.straddle.check.fix;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.check.Fix;
import org.straddle.check.Statement;
import org.straddle.model.Event;
import org.straddle.model.StraddlePackage;
import org.straddle.model.Turn;
import org.straddle.outlook.PolicyFigures;
import org.straddle.outlook.itinerary.Work;
import org.straddle.sky.Window;

/** Cuts a turn down to a part of itself. */
public record TrimTurn(Statement says, String turnId, Window window) implements Fix {

    /** To the part of the turn that lies in a window, or out of the plan when too little would be left. */
    public static Fix to(Window part, Work work, Statement says, PolicyFigures policies) {
        return part.intersection(work.window())
                .filter(left -> left.duration().compareTo(policies.minimumTurn()) >= 0)
                .<Fix>map(left -> new TrimTurn(says, work.turn().getId(), left))
                .orElseGet(() -> RemoveTurns.of(work));
    }

    @Override
    public String label() {
        return says.sentence();
    }

    @Override
    public Command command(EditingDomain domain, Event live) {
        Turn turn = new LivePlan(live).turn(turnId).orElse(null);
        if (turn == null) {
            return UnexecutableCommand.INSTANCE;
        }
        CompoundCommand both = new CompoundCommand(label());
        both.append(SetCommand.create(domain, turn, StraddlePackage.Literals.TURN__START, window.start()));
        both.append(SetCommand.create(domain, turn, StraddlePackage.Literals.TURN__END, window.end()));
        return both;
    }
}
