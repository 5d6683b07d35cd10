package org.straddle.ui.planning;

import java.util.Locale;
import java.util.OptionalDouble;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.straddle.plan.PlanChange;
import org.straddle.plan.Proposal;

/** Questions left, how the search stands in the middle with what can be done, and what it found on the right. */
final class PlanningBoard {

    /** What the buttons do. */
    record Deeds(Runnable search, Runnable stop, Runnable apply, Runnable discard) {
    }

    /** Pixels; below it the questions and buttons get more of the width. */
    private static final int NARROW = 1000;
    private static final int[] SHARES = {25, 29, 46};
    private static final int[] NARROW_SHARES = {41, 30, 29};

    private final SearchPane questions;
    private final WorthChart chart;
    private final Label stand;
    private final Label sentence;
    private final Button search;
    private final Button stop;
    private final Button apply;
    private final Button discard;
    private final ProposalTabs tabs;
    private FixedPane fixed;
    private boolean narrow;

    PlanningBoard(Composite parent, Deeds deeds) {
        SashForm thirds = new SashForm(parent, SWT.HORIZONTAL);
        questions = new SearchPane(thirds);
        Composite middle = new Composite(thirds, SWT.NONE);
        middle.setLayout(GridLayoutFactory.fillDefaults().margins(6, 6).spacing(6, 4).create());
        Composite row = new Composite(middle, SWT.NONE);
        row.setLayout(RowLayoutFactory.fillDefaults().wrap(true).pack(false).spacing(6).create());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        search = button(row, "&Search", "Search for a plan for all teams", deeds.search);
        stop = button(row, "St&op", "Stop, and show the best plan found so far", deeds.stop);
        apply = button(row, "&Put it in", "Put the plan into the event: one step, undone as one", deeds.apply);
        discard = button(row, "Thro&w away", "Forget the plan; the event stays as it is", deeds.discard);
        stand = wide(new Label(middle, SWT.WRAP));
        sentence = wide(new Label(middle, SWT.WRAP));
        chart = new WorthChart(middle);
        GridDataFactory.fillDefaults().grab(true, true).hint(200, 80).applyTo(chart);
        tabs = new ProposalTabs(thirds);
        tabs.addTab("Pins and bans", folder -> {
            fixed = new FixedPane(folder);
            return fixed.control();
        });
        thirds.setWeights(SHARES);
        thirds.addListener(SWT.Resize, event -> share(thirds));
        idle("Nothing searched yet.");
    }

    private static Label wide(Label label) {
        GridDataFactory.fillDefaults().grab(true, false).applyTo(label);
        return label;
    }

    private static Button button(Composite row, String text, String tip, Runnable action) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(text);
        button.setToolTipText(tip);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    private void share(SashForm thirds) {
        boolean isNarrow = thirds.getClientArea().width < NARROW;
        if (isNarrow != narrow) {
            narrow = isNarrow;
            thirds.setWeights(narrow ? NARROW_SHARES : SHARES);
        }
    }

    SearchPane questions() {
        return questions;
    }

    FixedPane fixed() {
        return fixed;
    }

    void setFocus() {
        search.setFocus();
    }

    private void enable(boolean running, boolean found) {
        search.setEnabled(!running);
        stop.setEnabled(running);
        apply.setEnabled(found);
        discard.setEnabled(found);
    }

    /** No search runs and there is nothing to put in. */
    void idle(String words) {
        tabs.clear();
        chart.begin(questions.wholeSeconds());
        say(words, "Pinned stops and turns stay as they are, and what is banned is left out.");
        enable(false, false);
    }

    /** A question cannot be read, so there is no search. */
    void refused(String words) {
        say("Not searched.", words);
    }

    void running() {
        tabs.clear();
        chart.begin(questions.wholeSeconds());
        say("Finding passes…", "Stop keeps the best plan found so far on offer.");
        enable(true, false);
    }

    void stands(SearchRun.Stand at) {
        chart.add(at);
        OptionalDouble gap = Proposal.gap(at.worth(), Double.isNaN(at.bound()) ? OptionalDouble.empty() : OptionalDouble.of(at.bound()));
        say(String.format(Locale.ROOT, "Worth %.2f", at.worth())
                + (Double.isNaN(at.bound()) ? ", no bound yet" : String.format(Locale.ROOT, ", at most %.2f", at.bound()))
                + (gap.isPresent() ? String.format(Locale.ROOT, ", gap %.2f %%", 100 * gap.getAsDouble()) : ""), sentence.getText());
    }

    void found(Proposal proposal) {
        tabs.show(proposal);
        enable(false, !proposal.bringsNothing());
        if (proposal.bringsNothing()) {
            say("There is nothing to plan.", proposal.ending().whyNothing().orElseThrow());
            return;
        }
        chart.add(new SearchRun.Stand(proposal.elapsed().toMillis() / 1000.0, proposal.objective(),
                proposal.upperBound().orElse(Double.NaN)));
        say(numbers(proposal), ending(proposal) + (proposal.replan().keeping() > 0 ? " " + changes(proposal) : ""));
    }

    private static String numbers(Proposal proposal) {
        return String.format(Locale.ROOT, "%s, worth %.2f", proposal.size(), proposal.worth())
                + (proposal.keeping() > 0 ? String.format(Locale.ROOT, " and %.2f for what it keeps", proposal.keeping()) : "")
                + (proposal.gap().isEmpty() ? "" : String.format(Locale.ROOT, "; at most %.2f possible, gap %.2f %%",
                        proposal.upperBound().getAsDouble(), 100 * proposal.gap().getAsDouble()));
    }

    private static String ending(Proposal proposal) {
        String how = switch (proposal.ending()) {
            case STOPPED -> "Stopped after %d s with the best so far.".formatted(proposal.elapsed().toSeconds());
            case PROVEN -> "Proven best after %d s.".formatted(proposal.elapsed().toSeconds());
            default -> "Searched for %d s.".formatted(proposal.elapsed().toSeconds());
        };
        return proposal.ending().whyNothing().orElse(how + (proposal.way() == Proposal.Way.WITH_BOUND
                && proposal.upperBound().isPresent() ? "" : " " + proposal.howItWasMade()));
    }

    private static String changes(Proposal proposal) {
        long restored = proposal.changes(PlanChange.Kind.RESTORED);
        return String.format("Of the present plan it keeps %d turns, moves %d and drops %d; it adds %d%s.",
                proposal.changes(PlanChange.Kind.KEPT), proposal.changes(PlanChange.Kind.MOVED),
                proposal.changes(PlanChange.Kind.DROPPED), proposal.changes(PlanChange.Kind.ADDED),
                restored == 0 ? "" : " and puts " + restored + " back as published");
    }

    private void say(String numbers, String words) {
        stand.setText(numbers);
        sentence.setText(words);
        stand.requestLayout();
        sentence.requestLayout();
    }
}
