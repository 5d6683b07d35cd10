package org.straddle.daysheet.edit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Ban;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.plan.Banning;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/**
 * Bans what a stop or turn does, and takes it out of the plan if that is wanted.
 *
 * @param id     of the stop or turn from which team, site and bird are taken
 * @param team   whether the ban holds for its team only
 * @param site   whether the ban holds for its site only
 * @param bird   whether the ban holds for its bird only; a stop has none
 * @param period when the ban holds; empty for the whole event
 * @param remove whether the stop or turn itself leaves the plan
 */
public record Forbid(String id, boolean team, boolean site, boolean bird, Optional<Window> period, String reason,
        boolean remove) implements SheetEdit {

    private static final Catalogue TEXTS = Catalogue.of(Forbid.class);

    @Override
    public Command command(EditingDomain domain, Event live) throws RefusedEdit {
        Identified thing = new LivePlan(live).stopOrTurn(id);
        Stop stop = thing instanceof Turn turn ? LivePlan.stopOf(turn) : (Stop) thing;
        Ban ban = Fresh.ban();
        ban.setTeam(team ? stop.getTeam() : null);
        ban.setSite(site ? stop.getSite() : null);
        ban.setBird(bird && thing instanceof Turn turn ? turn.getBird() : null);
        ban.setFrom(period.map(Window::start).orElse((Instant) null));
        ban.setUntil(period.map(Window::end).orElse((Instant) null));
        ban.setReason(reason);
        if (ban.getTeam() == null && ban.getSite() == null && ban.getBird() == null && period.isEmpty()) {
            throw new RefusedEdit(TEXTS.text("forbid.nothing"));
        }
        CompoundCommand all = new CompoundCommand(TEXTS.text("forbid", "thing", LivePlan.words(thing)));
        if (remove) {
            all.append(new Remove(id).command(domain, live));
        }
        all.append(Banning.add(domain, live, List.of(ban)));
        return all;
    }
}
