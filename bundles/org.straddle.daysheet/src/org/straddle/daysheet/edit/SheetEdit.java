package org.straddle.daysheet.edit;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.model.Event;

/**
 * One thing that somebody does to the plan on the day sheet: one command, undone as one. It names things by id, because
 * the sheet shows a snapshot and the command changes the live event.
 *
 * <p>An edit may make a plan that breaks rules, and the findings will say so; but what is pinned stays where and when
 * it is until somebody lets it go.
 */
public sealed interface SheetEdit permits PlaceStop, PlaceTurn, SplitStop, SplitTurn, AddStop, AddTurn, Remove, Pin, Forbid {

    /** @throws RefusedEdit when something is pinned, gone, or would end before it begins */
    Command command(EditingDomain domain, Event live) throws RefusedEdit;
}
