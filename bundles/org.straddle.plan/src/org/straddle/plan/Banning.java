package org.straddle.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.command.IdentityCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Ban;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Plan;
import org.straddle.model.StraddlePackage;
import org.straddle.words.Catalogue;

/** Adds bans to a plan and takes them out again. What a ban forbids, {@link org.straddle.outlook.Bans} says. */
public final class Banning {

    private static final Catalogue TEXTS = Catalogue.of(Banning.class);

    private Banning() {
    }

    /** Adds bans to the event's plan; the things they name must be of this event. One undo. */
    public static Command add(EditingDomain domain, Event event, Collection<Ban> bans) {
        if (bans.isEmpty()) {
            return IdentityCommand.INSTANCE;
        }
        CompoundCommand all = new CompoundCommand(TEXTS.text("ban.add", "bans", bans.size()));
        if (event.getPlan() == null) {
            Plan plan = Fresh.plan();
            plan.getBans().addAll(bans);
            all.append(SetCommand.create(domain, event, StraddlePackage.Literals.EVENT__PLAN, plan));
        } else {
            all.append(AddCommand.create(domain, event.getPlan(), StraddlePackage.Literals.PLAN__BANS,
                    new ArrayList<>(bans)));
        }
        return all;
    }

    /** Takes bans out of the event's plan. One undo. */
    public static Command remove(EditingDomain domain, Event event, Collection<Ban> bans) {
        List<Ban> there = event.getPlan() == null ? List.of()
                : bans.stream().filter(event.getPlan().getBans()::contains).toList();
        if (there.isEmpty()) {
            return IdentityCommand.INSTANCE;
        }
        CompoundCommand all = new CompoundCommand(TEXTS.text("ban.lift", "bans", there.size()));
        all.append(RemoveCommand.create(domain, event.getPlan(), StraddlePackage.Literals.PLAN__BANS, there));
        return all;
    }

    /** What a ban forbids, and why, in a line. */
    public static String words(Ban ban) {
        return BanText.whole(ban);
    }

    /**
     * The bans that name a thing. They have to go together with it: a ban that loses what it names forbids more than
     * before.
     */
    public static List<Ban> naming(Event event, Identified thing) {
        return event.getPlan() == null ? List.of()
                : event.getPlan().getBans().stream().filter(ban -> Objects.equals(ban.getTeam(), thing)
                        || Objects.equals(ban.getSite(), thing) || Objects.equals(ban.getBird(), thing)).toList();
    }
}
