package org.straddle.check.fix;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.edit.command.DeleteCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.check.Fix;
import org.straddle.check.Statement;
import org.straddle.model.Event;

/** Takes a stop with its turns out of the plan. */
public record RemoveStop(Statement says, String stopId) implements Fix {

    @Override
    public String label() {
        return says.sentence();
    }

    @Override
    public Command command(EditingDomain domain, Event live) {
        return new LivePlan(live).stop(stopId).map(stop -> DeleteCommand.create(domain, stop))
                .orElse(UnexecutableCommand.INSTANCE);
    }
}
