package org.straddle.check.fix;

import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.check.Fix;
import org.straddle.check.Statement;
import org.straddle.model.Event;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.KitSource;
import org.straddle.model.StraddlePackage;
import org.straddle.model.Team;

/** Lends a piece of club stock to a team for the event, to stand in for an item that has no spare. */
public record LendStock(Statement says, String item, String team, String failing) implements Fix {

    public static Fix of(KitItem item, Team team, KitItem failing) {
        return new LendStock(Statement.of("fix.lend", "item", item, "team", team), item.getId(), team.getId(), failing.getId());
    }

    /** Does the club own it, so that nothing has to be bought first? */
    public static boolean isStock(KitItem item) {
        return item.eContainer() instanceof Kit kit && kit.getSource() == KitSource.CLUB_STOCK;
    }

    @Override
    public String label() {
        return says.sentence();
    }

    @Override
    public Command command(EditingDomain domain, Event live) {
        Optional<KitItem> lent = live.getKits().stream().flatMap(kit -> kit.getItems().stream())
                .filter(each -> item.equals(each.getId()) && each.getLentTo() == null).findFirst();
        Optional<Team> borrower = live.getTeams().stream().filter(each -> team.equals(each.getId())).findFirst();
        if (lent.isEmpty() || borrower.isEmpty()) {
            return UnexecutableCommand.INSTANCE;
        }
        CompoundCommand both = new CompoundCommand();
        both.append(SetCommand.create(domain, lent.get(), StraddlePackage.Literals.KIT_ITEM__LENT_TO, borrower.get()));
        live.getKits().stream().flatMap(kit -> kit.getItems().stream())
                .filter(each -> failing.equals(each.getId()) && lent.get().getSpareFor() == null && each.getRole() == lent.get().getRole())
                .findFirst().ifPresent(original -> both.append(
                        SetCommand.create(domain, lent.get(), StraddlePackage.Literals.KIT_ITEM__SPARE_FOR, original)));
        return both;
    }
}
