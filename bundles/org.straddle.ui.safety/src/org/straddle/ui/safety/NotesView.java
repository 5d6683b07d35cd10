package org.straddle.ui.safety;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ComboViewer;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.part.ViewPart;
import org.straddle.model.Policies;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Stop;
import org.straddle.safety.ReviewState;
import org.straddle.safety.SafetyNotes;
import org.straddle.ui.parts.EmptyOr;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.SessionListener;
import org.straddle.ui.things.Icons;
import org.straddle.ui.things.ThingText;
import org.straddle.ui.things.Times;

/**
 * What a team must know about the hazards of one site on one day, and whether a review holds; a review is signed from
 * here. Follows a site, a stop or anything of a site that is selected elsewhere.
 */
public final class NotesView extends ViewPart implements SessionListener {

    public static final String ID = "org.straddle.ui.safety.notes";

    private final EventSession session = EventSession.current();
    private final ISelectionListener follow = this::follow;
    private EmptyOr<Composite> pages;
    private ComboViewer sites;
    private ComboViewer days;
    private Label stateIcon;
    private Label stateWord;
    private Label stateSentence;
    private NotesText text;
    private Site site;
    private LocalDate day;

    @Override
    public void createPartControl(Composite parent) {
        pages = new EmptyOr<>(parent, "", "", this::content);
        Action sign = action("&Sign off…", "review", this::signOff);
        Action open = action("&Open the site", "open", () -> session.reveal(site));
        Stream.of(sign, open).forEach(getViewSite().getActionBars().getToolBarManager()::add);
        getSite().getPage().addPostSelectionListener(follow);
        session.addListener(this);
        refresh();
    }

    @Override
    public void dispose() {
        session.removeListener(this);
        getSite().getPage().removePostSelectionListener(follow);
        super.dispose();
    }

    @Override
    public void setFocus() {
        if (site == null) {
            pages.setFocus();
        } else {
            text.setFocus();
        }
    }

    @Override
    public void opened(EventSession opened) {
        refresh();
    }

    @Override
    public void closed(EventSession closed) {
        refresh();
    }

    @Override
    public void edited(EventSession edited) {
        refresh();
    }

    private Composite content(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(8, 4).applyTo(body);
        chooser(body);
        state(body);
        text = new NotesText(body);
        text.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        return body;
    }

    private void chooser(Composite body) {
        Composite row = row(body, 4);
        new Label(row, SWT.NONE).setText("S&ite:");
        sites = combo(row, LabelProvider.createTextProvider(thing -> ThingText.of((Site) thing)));
        sites.addSelectionChangedListener(
                change -> choose((Site) change.getStructuredSelection().getFirstElement()));
        new Label(row, SWT.NONE).setText("&Day:");
        days = combo(row, LabelProvider.createTextProvider(any -> VisitDays.text((LocalDate) any, zoneToday())));
        days.addSelectionChangedListener(change -> {
            LocalDate chosen = (LocalDate) change.getStructuredSelection().getFirstElement();
            if (chosen != null && !chosen.equals(day)) {
                day = chosen;
                show();
            }
        });
    }

    private void state(Composite body) {
        Composite row = row(body, 4);
        stateIcon = new Label(row, SWT.NONE);
        stateWord = new Label(row, SWT.NONE);
        stateWord.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        stateSentence = new Label(row, SWT.WRAP);
        stateSentence.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        Button sign = new Button(row, SWT.PUSH);
        sign.setText("Si&gn off…");
        sign.addSelectionListener(SelectionListener.widgetSelectedAdapter(pressed -> signOff()));
    }

    private void refresh() {
        if (!session.isOpen()) {
            site = null;
            pages.say("No event is open.", "Open an event folder, make a new event, or look at the demo event.");
            return;
        }
        List<Site> all = session.event().getSites();
        if (all.isEmpty()) {
            site = null;
            pages.say("The event has no sites.", "Make a site in the explorer and enter what its survey saw; what a"
                    + " team must know about it then stands here.");
            return;
        }
        Site kept = all.contains(site) ? site : all.get(0);
        sites.setInput(List.copyOf(all));
        sites.setSelection(new StructuredSelection(kept));
        sites.getControl().requestLayout();
        if (kept == site) {
            offerDays();
            show();
        } else {
            choose(kept);
        }
        pages.showContent(true);
    }

    private void choose(Site chosen) {
        if (chosen != null && chosen != site) {
            site = chosen;
            day = VisitDays.first(session.event(), site, zoneToday());
            offerDays();
            show();
        }
    }

    private void offerDays() {
        days.setInput(VisitDays.offered(session.event(), day, zoneToday()));
        days.setSelection(new StructuredSelection(day));
        days.getControl().requestLayout();
    }

    private void show() {
        SafetyNotes notes = SafetyNotes.of(site, day);
        ReviewState state = notes.state();
        stateIcon.setImage(Icons.image(icon(state)));
        stateWord.setText("Review " + state.word());
        stateSentence.setText(state.sentence());
        stateSentence.setToolTipText(state.sentence());
        stateWord.requestLayout();
        stateSentence.requestLayout();
        text.show(notes);
    }

    /** Shapes differ, and the word stands beside them. */
    private static String icon(ReviewState state) {
        if (state instanceof ReviewState.Valid valid) {
            return valid.conditions().isEmpty() ? "accepted" : "advice";
        }
        return state instanceof ReviewState.Refused || state instanceof ReviewState.Missing ? "blocker" : "warning";
    }

    private void signOff() {
        SignOffDialog dialog = new SignOffDialog(getSite().getShell(), site, day, zoneToday(), policies());
        if (dialog.open() == Window.OK) {
            Review review = dialog.signOff().review(site);
            session.execute(Edit.add(session.editingDomain(), site, Literals.SITE__REVIEWS, review,
                    "review of " + ThingText.of(site)));
        }
    }

    private Policies policies() {
        Policies chosen = session.event().getPolicies();
        return chosen != null ? chosen : StraddleFactory.eINSTANCE.createPolicies();
    }

    private LocalDate zoneToday() {
        return LocalDate.now(Times.zone(session.event()));
    }

    private void follow(IWorkbenchPart from, ISelection selection) {
        if (from == this || !session.isOpen() || !(selection instanceof IStructuredSelection things)) {
            return;
        }
        Object pointed = things.getFirstElement() instanceof Stop stop ? stop.getSite() : things.getFirstElement();
        while (pointed instanceof EObject part && !(part instanceof Site)) {
            pointed = part.eContainer();
        }
        if (session.event().getSites().contains(pointed)) {
            sites.setSelection(new StructuredSelection(pointed));
        }
    }

    private static Composite row(Composite body, int columns) {
        Composite row = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(columns).applyTo(row);
        row.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        return row;
    }

    private static ComboViewer combo(Composite row, LabelProvider labels) {
        ComboViewer combo = new ComboViewer(row, SWT.READ_ONLY);
        combo.setContentProvider(ArrayContentProvider.getInstance());
        combo.setLabelProvider(labels);
        return combo;
    }

    /** Does nothing while there is no site. */
    private Action action(String text, String icon, Runnable run) {
        return new Action(text, Icons.descriptor(icon)) {
            @Override
            public void run() {
                if (site != null) {
                    run.run();
                }
            }
        };
    }
}
