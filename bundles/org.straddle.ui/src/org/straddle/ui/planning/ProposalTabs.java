package org.straddle.ui.planning;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;
import org.straddle.model.Identified;
import org.straddle.outlook.things.Times;
import org.straddle.plan.PlanChange;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.Proposal;
import org.straddle.plan.UncoveredSquare;
import org.straddle.ui.session.EventSession;

/** What a proposal says: its stops and what each adds, what it changes, and which squares it leaves out and why. */
final class ProposalTabs {

    private final TabFolder tabs;
    private final Rows<PlannedStop> stops;
    private final Rows<PlanChange> changes;
    private final Rows<UncoveredSquare> uncovered;
    private final TabItem stopsTab;
    private final TabItem changesTab;
    private final TabItem uncoveredTab;

    ProposalTabs(Composite parent) {
        tabs = new TabFolder(parent, SWT.NONE);
        stops = new Rows<PlannedStop>(tabs, SWT.NONE)
                .column("Team", 6, 48, stop -> String.valueOf(stop.team().getNumber()))
                .column("Site", 24, 110, stop -> stop.site().getName())
                .column("Squares", 16, 75, stop -> String.join(" ", stop.site().getSquares()))
                .column("When (UTC)", 24, 165, stop -> Times.utcDay(stop.stay().start()) + " "
                        + Times.utcClock(stop.stay().start()) + "–" + Times.utcClock(stop.stay().end()))
                .column("Birds", 20, 70, stop -> String.join(", ", stop.turns().stream().map(turn -> turn.bird().getName()).toList()))
                .column("Adds", 8, 50, stop -> worth(stop.gain()))
                .column("A turn", 9, 55, stop -> stop.turns().isEmpty() ? "" : worth(stop.turns().get(0).gain()))
                .column("State", 8, 50, stop -> stop.kept().isPresent() ? "fixed" : stop.continued().isPresent() ? "kept" : "new");
        changes = new Rows<PlanChange>(tabs, SWT.NONE)
                .column("Change", 8, 70, change -> change.kind().word())
                .column("When (UTC)", 14, 135, change -> Times.utcDay(change.at()) + " " + Times.utcClock(change.at()))
                .column("What", 78, 300, PlanChange::sentence);
        uncovered = new Rows<UncoveredSquare>(tabs, SWT.NONE)
                .column("Square", 8, 60, square -> square.square().name())
                .column("Wanted by", 8, 85, square -> Math.round(100 * square.demand()) + " %")
                .column("Reason", 10, 90, square -> square.reason().word())
                .column("Would cost", 8, 90, square -> square.cost().isPresent() ? worth(square.cost().getAsDouble()) : "")
                .column("Why", 66, 300, UncoveredSquare::why);
        stopsTab = tab("Stops", stops.frame());
        changesTab = tab("Changes", changes.frame());
        uncoveredTab = tab("Not worked", uncovered.frame());
        stops.viewer().addOpenListener(opening -> open(((PlannedStop) stops.viewer().getStructuredSelection().getFirstElement()).site()));
        changes.viewer().addOpenListener(opening -> ((PlanChange) changes.viewer().getStructuredSelection().getFirstElement())
                .before().ifPresent(this::open));
    }

    private void open(Identified thing) {
        EventSession.current().live(thing.getId()).ifPresent(EventSession.current()::reveal);
    }

    private TabItem tab(String text, Composite content) {
        TabItem item = new TabItem(tabs, SWT.NONE);
        item.setText(text);
        item.setControl(content);
        return item;
    }

    /** Adds a tab that is about the event rather than a proposal. */
    void addTab(String text, Function<Composite, Composite> content) {
        tab(text, content.apply(tabs));
    }

    Composite control() {
        return tabs;
    }

    void show(Proposal proposal) {
        stops.viewer().setInput(proposal.stops());
        changes.viewer().setInput(proposal.changes().stream().sorted((a, b) -> b.kind().compareTo(a.kind())).toList());
        uncovered.viewer().setInput(proposal.uncovered());
        stopsTab.setText("Stops (" + proposal.stops().size() + ")");
        changesTab.setText("Changes (" + Arrays.stream(PlanChange.Kind.values()).filter(kind -> kind != PlanChange.Kind.KEPT)
                .mapToLong(proposal::changes).sum() + ")");
        uncoveredTab.setText("Not worked (" + proposal.uncovered().size() + ")");
        tabs.setSelection(proposal.replan().keeping() > 0 ? changesTab : stopsTab);
    }

    void clear() {
        stops.viewer().setInput(List.of());
        changes.viewer().setInput(List.of());
        uncovered.viewer().setInput(List.of());
        stopsTab.setText("Stops");
        changesTab.setText("Changes");
        uncoveredTab.setText("Not worked");
    }

    private static String worth(double worth) {
        return String.format(Locale.ROOT, "%.3f", worth);
    }
}
