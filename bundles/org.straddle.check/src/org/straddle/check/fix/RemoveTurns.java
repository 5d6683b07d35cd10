package org.straddle.check.fix;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.edit.command.DeleteCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.check.Fix;
import org.straddle.check.Statement;
import org.straddle.model.Event;
import org.straddle.model.Turn;
import org.straddle.outlook.itinerary.Work;

/** Takes turns out of the plan. */
public record RemoveTurns(Statement says, List<String> turnIds) implements Fix {

    public static RemoveTurns of(Work work) {
        return new RemoveTurns(Statement.of("fix.removeTurn", "team", work.team(), "bird", work.bird()),
                List.of(work.turn().getId()));
    }

    public static RemoveTurns all(Statement says, Collection<Work> turns) {
        return new RemoveTurns(says, turns.stream().map(work -> work.turn().getId()).toList());
    }

    @Override
    public String label() {
        return says.sentence();
    }

    @Override
    public Command command(EditingDomain domain, Event live) {
        LivePlan plan = new LivePlan(live);
        List<Turn> turns = turnIds.stream().map(plan::turn).flatMap(Optional::stream).toList();
        return turns.isEmpty() ? UnexecutableCommand.INSTANCE : DeleteCommand.create(domain, turns);
    }
}
