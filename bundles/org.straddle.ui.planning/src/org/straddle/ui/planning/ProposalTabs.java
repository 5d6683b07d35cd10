package org.straddle.ui.planning;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;
import org.straddle.model.Identified;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.plan.PlanChange;
import org.straddle.plan.PlannedStop;
import org.straddle.plan.PlannedTurn;
import org.straddle.plan.Proposal;
import org.straddle.plan.UncoveredSquare;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;
import org.straddle.words.TimeText;

/** What a proposal says: its stops and what each adds, what it changes, and which squares it leaves out and why. */
final class ProposalTabs {

    private static final Catalogue TEXTS = Catalogue.of(ProposalTabs.class);

    private final TabFolder tabs;
    private final Rows<PlannedStop> stops;
    private final Rows<PlanChange> changes;
    private final Rows<UncoveredSquare> uncovered;
    private final TabItem stopsTab;
    private final TabItem changesTab;
    private final TabItem uncoveredTab;

    ProposalTabs(Composite parent) {
        Supplier<TimeText> times = () -> TimeText.of(Outlook.zoneOf(EventSession.current().event()));
        tabs = new TabFolder(parent, SWT.NONE);
        stops = new Rows<PlannedStop>(tabs, SWT.NONE)
                .column(TEXTS.text("proposalTabs.team"), 6, 48, stop -> String.valueOf(stop.team().getNumber()))
                .column(TEXTS.text("proposalTabs.site"), 24, 110, stop -> Naming.name(stop.site()))
                .column(TEXTS.text("proposalTabs.squares"), 16, 75, stop -> String.join(" ", stop.site().getSquares()))
                .column(TEXTS.text("proposalTabs.when"), 24, 165, stop -> times.get().during(stop.stay().start(), stop.stay().end()))
                .column(TEXTS.text("proposalTabs.birds"), 20, 70, stop -> String.join(", ", stop.turns().stream().map(turn -> Naming.name(turn.bird())).toList()))
                .column(TEXTS.text("proposalTabs.adds"), 8, 50, stop -> worth(stop.gain()))
                .column(TEXTS.text("proposalTabs.turn"), 9, 55, stop -> stop.turns().isEmpty() ? ""
                        : worth(stop.turns().stream().mapToDouble(PlannedTurn::gain).max().orElse(0)))
                .column(TEXTS.text("proposalTabs.state"), 8, 50, stop -> TEXTS.text("proposalTabs.state.of",
                        "state", stop.kept().isPresent() ? "fixed" : stop.continued().isPresent() ? "kept" : "new"));
        changes = new Rows<PlanChange>(tabs, SWT.NONE)
                .column(TEXTS.text("proposalTabs.change"), 8, 70, change -> change.kind().word())
                .column(TEXTS.text("proposalTabs.when"), 14, 135, change -> times.get().at(change.at()))
                .column(TEXTS.text("proposalTabs.what"), 78, 300, PlanChange::sentence);
        uncovered = new Rows<UncoveredSquare>(tabs, SWT.NONE)
                .column(TEXTS.text("proposalTabs.square"), 8, 60, square -> square.square().name())
                .column(TEXTS.text("proposalTabs.wanted"), 8, 85, square -> FigureText.inCurrent().percent(square.demand()))
                .column(TEXTS.text("proposalTabs.reason"), 10, 90, square -> square.reason().word())
                .column(TEXTS.text("proposalTabs.cost"), 8, 90, square -> square.cost().isPresent() ? worth(square.cost().getAsDouble()) : "")
                .column(TEXTS.text("proposalTabs.why"), 66, 300, UncoveredSquare::why);
        stopsTab = tab(TEXTS.text("proposalTabs.tab.stops"), stops.frame());
        changesTab = tab(TEXTS.text("proposalTabs.tab.changes"), changes.frame());
        uncoveredTab = tab(TEXTS.text("proposalTabs.uncovered"), uncovered.frame());
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
        stopsTab.setText(TEXTS.text("proposalTabs.stops.count", "count", proposal.stops().size()));
        changesTab.setText(TEXTS.text("proposalTabs.changes.count",
                "count", Arrays.stream(PlanChange.Kind.values()).filter(kind -> kind != PlanChange.Kind.KEPT).mapToLong(proposal::changes).sum()));
        uncoveredTab.setText(TEXTS.text("proposalTabs.uncovered.count", "count", proposal.uncovered().size()));
        tabs.setSelection(proposal.replan().keeping() > 0 ? changesTab : stopsTab);
    }

    void clear() {
        stops.viewer().setInput(List.of());
        changes.viewer().setInput(List.of());
        uncovered.viewer().setInput(List.of());
        stopsTab.setText(TEXTS.text("proposalTabs.tab.stops"));
        changesTab.setText(TEXTS.text("proposalTabs.tab.changes"));
        uncoveredTab.setText(TEXTS.text("proposalTabs.uncovered"));
    }

    private static String worth(double worth) {
        return FigureText.inCurrent().fixed(1, worth);
    }
}
