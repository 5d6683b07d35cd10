package org.straddle.plan;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.command.IdentityCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Identified;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage;
import org.straddle.model.Turn;
import org.straddle.words.Catalogue;

/**
 * Pins stops and turns, and lets them go again: what is pinned no planner moves. A pinned turn holds its stop as well;
 * a pinned stop does not hold its turns, they may still be chosen anew within it.
 */
public final class Pinning {

    private static final Catalogue TEXTS = Catalogue.of(Pinning.class);

    private Pinning() {
    }

    /** Pins each of these stops and turns; what is pinned already is left alone. One undo. */
    public static Command pin(EditingDomain domain, Collection<? extends Identified> stopsAndTurns) {
        return set(domain, stopsAndTurns, true);
    }

    /** Lets each of these stops and turns go; what is not pinned is left alone. One undo. */
    public static Command unpin(EditingDomain domain, Collection<? extends Identified> stopsAndTurns) {
        return set(domain, stopsAndTurns, false);
    }

    /** Pins these stops with all that is planned in them. One undo. */
    public static Command pinWhole(EditingDomain domain, Collection<Stop> stops) {
        return pin(domain, whole(stops));
    }

    /** Lets these stops go with all that is planned in them. One undo. */
    public static Command unpinWhole(EditingDomain domain, Collection<Stop> stops) {
        return unpin(domain, whole(stops));
    }

    private static List<Identified> whole(Collection<Stop> stops) {
        return stops.stream().<Identified>mapMulti((stop, each) -> {
            each.accept(stop);
            stop.getTurns().forEach(each);
        }).toList();
    }

    private static Command set(EditingDomain domain, Collection<? extends Identified> things, boolean pinned) {
        CompoundCommand all = new CompoundCommand(TEXTS.text("pin", "pinned", pinned));
        for (Identified thing : things) {
            if (thing instanceof Stop stop && stop.isPinned() != pinned) {
                all.append(SetCommand.create(domain, stop, StraddlePackage.Literals.STOP__PINNED, pinned));
            } else if (thing instanceof Turn turn && turn.isPinned() != pinned) {
                all.append(SetCommand.create(domain, turn, StraddlePackage.Literals.TURN__PINNED, pinned));
            }
        }
        return all.isEmpty() ? IdentityCommand.INSTANCE : all;
    }
}
