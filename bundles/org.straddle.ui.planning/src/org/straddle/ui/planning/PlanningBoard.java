package org.straddle.ui.planning;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.straddle.model.naming.Naming;
import org.straddle.plan.PlanChange;
import org.straddle.plan.Proposal;
import org.straddle.words.Catalogue;

/**
 * Questions left, how the search stands in the middle with what can be done, and what it found on the right. Where the width does
 * not do for three and the height does, the questions lie above the stand.
 */
final class PlanningBoard {

    private static final Catalogue TEXTS = Catalogue.of(PlanningBoard.class);

    /** What the buttons do. */
    record Deeds(Runnable search, Runnable stop, Runnable apply, Runnable discard) {
    }

    /** Per cent of the width: the questions get what they need within these, the stand gets its own, the proposal the rest. */
    private static final int LEAST_QUESTIONS = 25;
    private static final int MOST_QUESTIONS = 41;
    private static final int STAND = 29;

    /** Of the width and the height where they lie above each other, per cent. */
    private static final int MOST_LEFT = 60;
    private static final int QUESTIONS_ABOVE = 58;

    /** Pixels that stand and proposal want beside the questions, and the height that two above each other want. */
    private static final int BESIDE = 560;
    private static final int ABOVE = 420;

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
    private ToDoPane toDo;
    private final SashForm halves;
    private final SashForm left;
    private List<Integer> shares = List.of();

    PlanningBoard(Composite parent, Deeds deeds) {
        halves = new SashForm(parent, SWT.HORIZONTAL);
        left = new SashForm(halves, SWT.HORIZONTAL);
        questions = new SearchPane(left);
        Composite middle = new Composite(left, SWT.NONE);
        middle.setLayout(GridLayoutFactory.fillDefaults().margins(6, 6).spacing(6, 4).create());
        Composite row = new Composite(middle, SWT.NONE);
        row.setLayout(RowLayoutFactory.fillDefaults().wrap(true).pack(false).spacing(6).create());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        search = button(row, TEXTS.text("planningBoard.search"), TEXTS.text("planningBoard.search.tooltip"), deeds.search);
        stop = button(row, TEXTS.text("planningBoard.stop"), TEXTS.text("planningBoard.stop.tooltip"), deeds.stop);
        apply = button(row, TEXTS.text("planningBoard.use"), TEXTS.text("planningBoard.use.tooltip"), deeds.apply);
        discard = button(row, TEXTS.text("planningBoard.discard"), TEXTS.text("planningBoard.discard.tooltip"), deeds.discard);
        stand = wide(new Label(middle, SWT.WRAP));
        sentence = wide(new Label(middle, SWT.WRAP));
        chart = new WorthChart(middle);
        GridDataFactory.fillDefaults().grab(true, true).hint(200, 80).applyTo(chart);
        tabs = new ProposalTabs(halves);
        tabs.addTab(TEXTS.text("planningBoard.fixed"), folder -> {
            fixed = new FixedPane(folder);
            return fixed.control();
        });
        tabs.addTab(TEXTS.text("planningBoard.toDo"), folder -> {
            toDo = new ToDoPane(folder);
            return toDo.control();
        });
        share();
        halves.addListener(SWT.Resize, event -> share());
        idle(TEXTS.text("planningBoard.nothing"));
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

    private void share() {
        Rectangle room = halves.getClientArea();
        int wanted = 100 * questions.wantedWidth() / Math.max(1, room.width) + 1;
        if (room.width < questions.wantedWidth() + BESIDE && room.height >= ABOVE) {
            int part = Math.min(MOST_LEFT, Math.max(STAND, wanted));
            share(SWT.VERTICAL, List.of(part, 100 - part), List.of(QUESTIONS_ABOVE, 100 - QUESTIONS_ABOVE));
        } else {
            int part = Math.max(LEAST_QUESTIONS, Math.min(MOST_QUESTIONS, wanted));
            share(SWT.HORIZONTAL, List.of(part + STAND, 100 - part - STAND), List.of(part, STAND));
        }
    }

    /** What somebody dragged stays until there is another room to share. */
    private void share(int orientation, List<Integer> ofHalves, List<Integer> ofLeft) {
        List<Integer> now = List.of(orientation, ofHalves.get(0), ofLeft.get(0));
        if (!now.equals(shares)) {
            shares = now;
            left.setOrientation(orientation);
            halves.setWeights(ofHalves.get(0), ofHalves.get(1));
            left.setWeights(ofLeft.get(0), ofLeft.get(1));
        }
    }

    SearchPane questions() {
        return questions;
    }

    FixedPane fixed() {
        return fixed;
    }

    ToDoPane toDo() {
        return toDo;
    }

    void setFocus() {
        search.setFocus();
    }

    boolean isRunning() {
        return stop.isEnabled();
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
        say(words, TEXTS.text("planningBoard.nothing.text"));
        enable(false, false);
    }

    /** A question cannot be read, so there is no search. */
    void refused(String words) {
        say(TEXTS.text("planningBoard.refused"), words);
    }

    void running() {
        tabs.clear();
        chart.begin(questions.wholeSeconds());
        say(TEXTS.text("planningBoard.passes"), TEXTS.text("planningBoard.passes.text"));
        enable(true, false);
    }

    void stands(SearchRun.Stand at) {
        chart.add(at);
        OptionalDouble gap = Proposal.gap(at.worth(), Double.isNaN(at.bound()) ? OptionalDouble.empty() : OptionalDouble.of(at.bound()));
        String numbers = Double.isNaN(at.bound()) ? TEXTS.text("planningBoard.stand.nobound", "worth", at.worth())
                : gap.isEmpty() ? TEXTS.text("planningBoard.stand.nogap", "worth", at.worth(), "bound", at.bound())
                : TEXTS.text("planningBoard.stand", "worth", at.worth(), "bound", at.bound(), "gap", 100 * gap.getAsDouble());
        say(numbers, sentence.getText());
    }

    void found(Proposal proposal) {
        tabs.show(proposal);
        enable(false, !proposal.bringsNothing());
        if (proposal.bringsNothing()) {
            say(TEXTS.text("planningBoard.empty"), proposal.ending().whyNothing().orElseThrow());
            return;
        }
        chart.add(new SearchRun.Stand(proposal.elapsed().toMillis() / 1000.0, proposal.objective(),
                proposal.upperBound().orElse(Double.NaN)));
        String ending = ending(proposal);
        String words = proposal.replan().keeping() > 0
                ? TEXTS.text("planningBoard.sentences", "first", ending, "second", changes(proposal)) : ending;
        say(numbers(proposal), proposal.idle().isEmpty() ? words
                : TEXTS.text("planningBoard.sentences", "first", words, "second", idle(proposal)));
    }

    private static String numbers(Proposal proposal) {
        String found = TEXTS.text("planningBoard.found", "size", proposal.size(), "worth", proposal.worth(),
                "keeping", Math.max(0, proposal.keeping()));
        return proposal.gap().isEmpty() ? found : TEXTS.text("planningBoard.found.bound", "found", found,
                "bound", proposal.upperBound().getAsDouble(), "gap", 100 * proposal.gap().getAsDouble());
    }

    private static String ending(Proposal proposal) {
        String how = switch (proposal.ending()) {
            case STOPPED -> TEXTS.text("planningBoard.stopped", "seconds", proposal.elapsed().toSeconds());
            case PROVEN -> TEXTS.text("planningBoard.proven", "seconds", proposal.elapsed().toSeconds());
            default -> TEXTS.text("planningBoard.searched", "seconds", proposal.elapsed().toSeconds());
        };
        return proposal.ending().whyNothing().orElse(proposal.way() == Proposal.Way.WITH_BOUND && proposal.upperBound().isPresent()
                ? how : TEXTS.text("planningBoard.sentences", "first", how, "second", proposal.howItWasMade()));
    }

    /** A team that stays at home is never passed over in silence. */
    private static String idle(Proposal proposal) {
        return String.join(" ", proposal.idle().stream().map(idle -> TEXTS.text("planningBoard.idle",
                "team", Naming.name(idle.team()), "why", idle.why())).toList());
    }

    private static String changes(Proposal proposal) {
        return TEXTS.text("planningBoard.changes", "kept", proposal.changes(PlanChange.Kind.KEPT),
                "moved", proposal.changes(PlanChange.Kind.MOVED), "dropped", proposal.changes(PlanChange.Kind.DROPPED),
                "added", proposal.changes(PlanChange.Kind.ADDED), "restored", proposal.changes(PlanChange.Kind.RESTORED));
    }

    private void say(String numbers, String words) {
        stand.setText(numbers);
        sentence.setText(words);
        stand.requestLayout();
        sentence.requestLayout();
    }
}
