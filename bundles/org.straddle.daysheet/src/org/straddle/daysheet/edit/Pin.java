package org.straddle.daysheet.edit;

import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.plan.Pinning;
import org.straddle.words.Catalogue;

/**
 * Pins a stop or a turn, or lets it go.
 *
 * @param pinned what it is to be
 */
public record Pin(String id, boolean pinned) implements SheetEdit {

    private static final Catalogue TEXTS = Catalogue.of(Pin.class);

    @Override
    public Command command(EditingDomain domain, Event live) throws RefusedEdit {
        Identified thing = new LivePlan(live).stopOrTurn(id);
        CompoundCommand all = new CompoundCommand(TEXTS.text("pin", "pinned", pinned, "thing", LivePlan.words(thing)));
        all.append(pinned ? Pinning.pin(domain, List.of(thing)) : Pinning.unpin(domain, List.of(thing)));
        return all;
    }
}
