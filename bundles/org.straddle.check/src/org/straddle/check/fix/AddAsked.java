package org.straddle.check.fix;

import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.check.Fact;
import org.straddle.check.Fix;
import org.straddle.check.Statement;
import org.straddle.kit.asked.Provided;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.KitSource;
import org.straddle.model.Role;
import org.straddle.model.SafetyUse;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;

/** Puts what the plan asks for on a team's list, as an item of the first kit of its own that it carries. */
public record AddAsked(Statement says, String team, SafetyUse use, double missing, int vestClass) implements Fix {

    public static Fix of(Provided lacking, Team team) {
        return new AddAsked(Statement.of("fix.addAsked", "thing", Fact.told(lacking.asked().title()), "team", team), team.getId(),
                lacking.asked().use(), lacking.missing(), lacking.asked().vestClass());
    }

    @Override
    public String label() {
        return says.sentence();
    }

    @Override
    public Command command(EditingDomain domain, Event live) {
        Optional<Team> carrier = live.getTeams().stream().filter(each -> team.equals(each.getId())).findFirst();
        if (carrier.isEmpty()) {
            return UnexecutableCommand.INSTANCE;
        }
        Optional<Kit> own = carrier.get().getKits().stream().filter(kit -> !kit.eIsProxy() && kit.getSource() == KitSource.CARRIED
                && live.getTeams().stream().noneMatch(other -> other != carrier.get() && other.getKits().contains(kit))).findFirst();
        if (own.isPresent()) {
            return AddCommand.create(domain, own.get(), Literals.KIT__ITEMS, item());
        }
        Kit fresh = Fresh.kit();
        fresh.setName(Naming.name(carrier.get()));
        fresh.getItems().add(item());
        CompoundCommand both = new CompoundCommand();
        both.append(AddCommand.create(domain, live, Literals.EVENT__KITS, fresh));
        both.append(AddCommand.create(domain, carrier.get(), Literals.TEAM__KITS, fresh));
        return both;
    }

    /** Tape and water are one piece of the whole length or volume; all else is counted. */
    private KitItem item() {
        KitItem item = Fresh.kitItem(Naming.of(use), Role.SAFETY);
        item.setSafetyUse(use);
        item.setVestClass(vestClass);
        switch (use) {
            case TAPE -> item.setTapeM(missing);
            case WATER -> item.setWaterLitres(missing);
            default -> item.setCount((int) Math.ceil(missing));
        }
        return item;
    }
}
