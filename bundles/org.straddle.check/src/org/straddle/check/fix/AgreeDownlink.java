package org.straddle.check.fix;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.check.Fact;
import org.straddle.check.Fix;
import org.straddle.check.Statement;
import org.straddle.model.Event;
import org.straddle.model.StraddlePackage;
import org.straddle.model.Turn;
import org.straddle.outlook.itinerary.FreeDownlink;
import org.straddle.outlook.itinerary.Work;

/**
 * Gives turns a place in the passband.
 *
 * @param downlinkMhz by the id of the turn
 */
public record AgreeDownlink(Statement says, Map<String, Double> downlinkMhz) implements Fix {

    public AgreeDownlink {
        downlinkMhz = Map.copyOf(downlinkMhz);
    }

    /**
     * A place for each turn, as near as can be to what was agreed; empty when there is not room for all.
     *
     * @param taken frequencies that are in use at the same time, MHz
     */
    public static Optional<Fix> clearOf(Collection<Double> taken, List<Work> works) {
        List<Double> used = new ArrayList<>(taken);
        Map<String, Double> agreed = new LinkedHashMap<>();
        List<Statement> parts = new ArrayList<>();
        for (Work work : works) {
            OptionalDouble free = FreeDownlink.of(used, work.bird(), work.turn().getDownlinkMhz());
            if (free.isEmpty()) {
                return Optional.empty();
            }
            used.add(free.getAsDouble());
            agreed.put(work.turn().getId(), free.getAsDouble());
            parts.add(Statement.of("fix.downlink.for", "mhz", Fact.mhz(free.getAsDouble()), "team", work.team()));
        }
        return Optional.of(new AgreeDownlink(Statement.of("fix.downlink", "parts", parts), agreed));
    }

    @Override
    public String label() {
        return says.sentence();
    }

    @Override
    public Command command(EditingDomain domain, Event live) {
        CompoundCommand all = new CompoundCommand(label());
        LivePlan plan = new LivePlan(live);
        for (Map.Entry<String, Double> agreed : downlinkMhz.entrySet()) {
            Optional<Turn> turn = plan.turn(agreed.getKey());
            if (turn.isEmpty()) {
                return UnexecutableCommand.INSTANCE;
            }
            all.append(SetCommand.create(domain, turn.get(), StraddlePackage.Literals.TURN__DOWNLINK_MHZ, agreed.getValue()));
        }
        return all.unwrap();
    }
}
