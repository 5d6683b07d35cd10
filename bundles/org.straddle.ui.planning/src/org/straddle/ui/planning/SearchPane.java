package org.straddle.ui.planning;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;
import org.straddle.model.Event;
import org.straddle.model.Policies;
import org.straddle.model.SitesTaken;
import org.straddle.model.naming.Naming;
import org.straddle.plan.PlanSettings;
import org.straddle.plan.Replan;
import org.straddle.plan.SiteUse;
import org.straddle.plan.WhatIf;
import org.straddle.ui.fields.Instants;
import org.straddle.ui.session.EventSession;
import org.straddle.words.Catalogue;

/** What to search for: how long, from which seed, how to hold on to the present plan, and what may happen. */
final class SearchPane {

    private static final Catalogue TEXTS = Catalogue.of(SearchPane.class);

    private static final int HUNDREDTHS = 100;

    private final EventSession session = EventSession.current();
    private final ScrolledComposite scroll;
    private final Spinner seconds;
    private final Spinner seed;
    private final Button hold;
    private final Spinner keeping;
    private final Combo sites;
    private final Text from;
    private final Label wrong;
    private final org.eclipse.swt.widgets.List cases;
    private final List<Case> happening = new ArrayList<>();

    SearchPane(Composite parent) {
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL | SWT.H_SCROLL);
        Composite body = new Composite(scroll, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 4).spacing(8, 3).create());
        seconds = spinner(body, TEXTS.text("searchPane.seconds"), 20, 1, 3600, 0, TEXTS.text("searchPane.seconds.tooltip"));
        seed = spinner(body, TEXTS.text("searchPane.seed"), 1, 1, Integer.MAX_VALUE, 0,
                TEXTS.text("searchPane.seed.tooltip"));
        hold = new Button(body, SWT.CHECK);
        hold.setText(TEXTS.text("searchPane.hold"));
        hold.setToolTipText(TEXTS.text("searchPane.hold.tooltip"));
        GridDataFactory.fillDefaults().span(2, 1).applyTo(hold);
        keeping = spinner(body, TEXTS.text("searchPane.keeping"), (int) (HUNDREDTHS * Replan.USUAL_KEEPING), 0, 10_000, 2,
                TEXTS.text("searchPane.keeping.tooltip"));
        new Label(body, SWT.NONE).setText(TEXTS.text("searchPane.sites"));
        sites = new Combo(body, SWT.DROP_DOWN | SWT.READ_ONLY);
        sites.setToolTipText(TEXTS.text("searchPane.sites.tooltip"));
        sites.add(asTheEventSays(SitesTaken.READY_FIRST));
        SitesTaken.VALUES.forEach(choice -> sites.add(Naming.of(choice)));
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).applyTo(sites);
        new Label(body, SWT.NONE).setText(TEXTS.text("searchPane.from"));
        from = new Text(body, SWT.BORDER);
        from.setMessage(TEXTS.text("searchPane.from.empty"));
        from.setToolTipText(TEXTS.text("searchPane.from.tooltip"));
        GridDataFactory.fillDefaults().grab(true, false).hint(120, SWT.DEFAULT).applyTo(from);
        wrong = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).exclude(true).applyTo(wrong);
        new Label(body, SWT.NONE).setText(TEXTS.text("searchPane.cases"));
        cases = new org.eclipse.swt.widgets.List(body, SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(120, 40).applyTo(cases);
        Composite row = new Composite(body, SWT.NONE);
        row.setLayout(GridLayoutFactory.fillDefaults().numColumns(2).create());
        GridDataFactory.fillDefaults().span(2, 1).align(SWT.END, SWT.FILL).applyTo(row);
        button(row, TEXTS.text("searchPane.add"), this::addCase);
        button(row, TEXTS.text("searchPane.remove"), this::takeOut);
        scroll.setContent(body);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        hold.addListener(SWT.Selection, event -> keeping.setEnabled(hold.getSelection()));
        keeping.setEnabled(false);
        from.addModifyListener(change -> check());
    }

    /** Pixels in which nothing is cut off. */
    int wantedWidth() {
        scroll.setMinSize(scroll.getContent().computeSize(SWT.DEFAULT, SWT.DEFAULT));
        return scroll.getMinWidth() + scroll.getVerticalBar().getSize().x;
    }

    private static Spinner spinner(Composite body, String label, int value, int least, int most, int digits, String tip) {
        new Label(body, SWT.NONE).setText(label);
        Spinner spinner = new Spinner(body, SWT.BORDER);
        spinner.setValues(value, least, most, digits, digits == 0 ? 1 : 5, digits == 0 ? 10 : 50);
        spinner.setToolTipText(tip);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(spinner);
        return spinner;
    }

    private static void button(Composite row, String text, Runnable action) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, event -> action.run());
    }

    private void addCase() {
        CaseDialog dialog = new CaseDialog(scroll.getShell(), session.event(), Case.Kind.TEAM_OUT, TEXTS.text("searchPane.case"),
                TEXTS.text("searchPane.case.explanation"), TEXTS.text("searchPane.case.add"));
        if (dialog.open() == CaseDialog.OK) {
            add(dialog.result());
        }
    }

    void add(Case happens) {
        happening.add(happens);
        cases.add(happens.words(session.event()));
        hold.setSelection(true);
        keeping.setEnabled(true);
    }

    private void takeOut() {
        int chosen = cases.getSelectionIndex();
        if (chosen >= 0) {
            cases.remove(chosen);
            happening.remove(chosen);
        }
    }

    private static String asTheEventSays(SitesTaken usual) {
        return TEXTS.text("searchPane.sites.event", "choice", Naming.of(usual));
    }

    /** The first choice is what the event says. */
    void showSites() {
        Policies policies = session.event().getPolicies();
        SitesTaken usual = policies == null ? SitesTaken.READY_FIRST : policies.getSitesTaken();
        String first = asTheEventSays(usual);
        if (!sites.getItem(0).equals(first)) {
            int chosen = Math.max(0, sites.getSelectionIndex());
            sites.setItem(0, first);
            sites.select(chosen);
        }
    }

    /** As the event says. */
    void forgetSites() {
        showSites();
        sites.select(0);
    }

    /** Their bans are in the plan now, or the event is another one. */
    void forgetCases() {
        cases.removeAll();
        happening.clear();
    }

    void setFocus() {
        seconds.setFocus();
    }

    /** Puts the cursor into the field that cannot be read; what is wrong with it. */
    String correct() {
        from.setFocus();
        from.selectAll();
        return TEXTS.text("searchPane.from.wrong", "problem", wrong.getText());
    }

    /** Whether everything can be read; else it says what cannot. */
    boolean check() {
        String words = "";
        try {
            from();
        } catch (IllegalArgumentException unreadable) {
            words = unreadable.getMessage();
        }
        ((GridData) wrong.getLayoutData()).exclude = words.isEmpty();
        wrong.setVisible(!words.isEmpty());
        wrong.setText(words);
        wrong.requestLayout();
        return words.isEmpty();
    }

    private Optional<Instant> from() {
        return !session.isOpen() ? Optional.empty()
                : Optional.ofNullable(Instants.in(session.event()).parse(from.getText()));
    }

    double wholeSeconds() {
        return seconds.getSelection();
    }

    /** @param snapshot the copy that will be planned: the cases name its things, and it takes the choice of sites */
    PlanSettings settings(Event snapshot) {
        if (sites.getSelectionIndex() > 0) {
            SiteUse.take(SitesTaken.VALUES.get(sites.getSelectionIndex() - 1), snapshot);
        }
        List<WhatIf> whatIfs = happening.stream().flatMap(happens -> happens.in(snapshot).stream()).toList();
        double worth = hold.getSelection() ? (double) keeping.getSelection() / HUNDREDTHS : 0;
        return new PlanSettings(Duration.ofSeconds(seconds.getSelection()), seed.getSelection(), OptionalLong.empty(),
                new Replan(from(), worth, whatIfs));
    }
}
