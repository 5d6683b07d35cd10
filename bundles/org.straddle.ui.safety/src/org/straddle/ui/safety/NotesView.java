package org.straddle.ui.safety;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.straddle.model.Event;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Policies;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.safety.Light;
import org.straddle.safety.ReviewState;
import org.straddle.safety.SafetyNotes;
import org.straddle.safety.SecondSignature;
import org.straddle.ui.importing.ImportForecasts;
import org.straddle.ui.parts.Chooser;
import org.straddle.ui.parts.OwnRow;
import org.straddle.ui.parts.ThingView;
import org.straddle.ui.safety.guided.GuideThrough;
import org.straddle.ui.session.Edit;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;

/**
 * What a team must know about the hazards of one site on one day, and whether a review holds; a review is signed from
 * here. Follows a site, a stop or anything of a site that is selected elsewhere.
 */
public final class NotesView extends ThingView<Site> {

    private static final Catalogue TEXTS = Catalogue.of(NotesView.class);

    /** Pixels for how the review stands beside the buttons. */
    private static final int LEAST_SENTENCE = 150;

    public static final String ID = "org.straddle.ui.safety.notes";

    private final EventSession session = session();
    private Chooser<LocalDate> days;
    private Label stateIcon;
    private Label stateWord;
    private Label stateSentence;
    private Button second;
    private NotesText text;
    private Site asked;
    private LocalDate day;

    public NotesView() {
        super(TEXTS.text("notesView.none"), TEXTS.text("notesView.none.make"));
    }

    @Override
    protected void equip(Composite content) {
        super.equip(content);
        Action sign = act(TEXTS.text("notesView.sign"), "review", this::signOff);
        Action guided = act(TEXTS.text("notesView.guided"), "fix", this::guide);
        Action second = act(TEXTS.text("notesView.second"), "operator", this::signToo);
        Action open = act(TEXTS.text("notesView.open"), "open", () -> session.reveal(thing()));
        Action forecast = act(TEXTS.text("notesView.forecast"), "import", () -> ImportForecasts.ask(getSite().getShell(), thing()));
        Stream.of(guided, sign, second, forecast, open).forEach(getViewSite().getActionBars().getToolBarManager()::add);
    }

    @Override
    public void setFocus() {
        if (thing() == null) {
            pages().setFocus();
        } else {
            text.setFocus();
        }
    }

    @Override
    protected List<Site> things(Event event) {
        return event.getSites();
    }

    @Override
    protected Object meant(Object selected) {
        Object meant = selected instanceof Stop stop ? stop.getSite() : selected;
        while (meant instanceof EObject part && !(part instanceof Site)) {
            meant = part.eContainer();
        }
        return meant;
    }

    @Override
    protected Composite content(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(6, 4).spacing(8, 4).applyTo(body);
        choosers(row(body, 4));
        state(body);
        text = new NotesText(body);
        text.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        return body;
    }

    private void choosers(Composite row) {
        chooser(row, TEXTS.text("notesView.site"));
        days = new Chooser<>(row, TEXTS.text("notesView.day"), any -> VisitDays.text(any, zoneToday()), chosen -> {
            day = chosen;
            tell();
        });
    }

    private void state(Composite body) {
        Composite row = row(body, 6);
        stateIcon = new Label(row, SWT.NONE);
        stateWord = new Label(row, SWT.NONE);
        stateWord.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        stateSentence = new Label(row, SWT.WRAP);
        stateSentence.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        Button guided = new Button(row, SWT.PUSH);
        guided.setText(TEXTS.text("notesView.guided"));
        guided.addSelectionListener(SelectionListener.widgetSelectedAdapter(pressed -> guide()));
        second = new Button(row, SWT.PUSH);
        second.setText(TEXTS.text("notesView.second"));
        second.addSelectionListener(SelectionListener.widgetSelectedAdapter(pressed -> signToo()));
        Button sign = new Button(row, SWT.PUSH);
        sign.setText(TEXTS.text("notesView.sign"));
        sign.addSelectionListener(SelectionListener.widgetSelectedAdapter(pressed -> signOff()));
        OwnRow.whereNarrow(stateSentence, LEAST_SENTENCE);
    }

    @Override
    protected void show(Site site) {
        if (site != asked) {
            asked = site;
            day = VisitDays.first(session.event(), site, zoneToday());
        }
        days.offer(VisitDays.offered(session.event(), day, zoneToday()), day);
        tell();
    }

    private void tell() {
        SafetyNotes notes = SafetyNotes.of(thing(), day, policies(), Light.UNKNOWN, countries());
        ReviewState state = notes.state();
        stateIcon.setImage(Icons.image(icon(state)));
        stateWord.setText(TEXTS.text("notesView.state", "state", state.word()));
        stateSentence.setText(state.sentence());
        stateSentence.setToolTipText(state.sentence());
        second.setEnabled(SecondSignature.awaited(thing(), day, policies()).isPresent());
        stateWord.requestLayout();
        stateSentence.requestLayout();
        text.show(notes);
    }

    /** From the last state of the event that was worked out: which countries the site lies in. */
    private List<Jurisdiction> countries() {
        return session.computed().flatMap(computed -> computed.outlook().event().getSites().stream()
                .filter(site -> site.getId().equals(thing().getId())).findFirst().map(computed.outlook()::jurisdictions)).orElse(List.of());
    }

    /** Shapes differ, and the word stands beside them. */
    private static String icon(ReviewState state) {
        if (state instanceof ReviewState.Valid valid) {
            return valid.conditions().isEmpty() ? "accepted" : "advice";
        }
        return state instanceof ReviewState.Refused || state instanceof ReviewState.Missing ? "blocker" : "warning";
    }

    private void signOff() {
        Site site = thing();
        SignOffDialog dialog = new SignOffDialog(getSite().getShell(), site, day, zoneToday(), policies());
        if (dialog.open() == Window.OK) {
            Review review = dialog.signOff().review(site, Instant.now().truncatedTo(ChronoUnit.MINUTES));
            session.execute(Edit.add(session.editingDomain(), site, Literals.SITE__REVIEWS, review,
                    TEXTS.text("notesView.sign.undo", "site", Naming.name(site))));
        }
    }

    private void guide() {
        LocalDate today = zoneToday();
        new GuideThrough(session, getSite().getShell()).ask(thing(), day, today.isAfter(day) ? day : today);
    }

    /** The name of somebody else under a review that one person signed. */
    private void signToo() {
        Optional<Review> awaited = SecondSignature.awaited(thing(), day, policies());
        if (awaited.isEmpty()) {
            MessageDialog.openInformation(getSite().getShell(), TEXTS.text("notesView.second.none"), TEXTS.text("notesView.second.why"));
            return;
        }
        Review review = awaited.get();
        InputDialog dialog = new InputDialog(getSite().getShell(), TEXTS.text("notesView.second.title", "site", Naming.name(thing())),
                TEXTS.text("notesView.second.ask", "reviewer", review.getReviewer()), "",
                name -> signature(name).problem(thing(), review).orElse(null));
        if (dialog.open() == Window.OK) {
            session.execute(Edit.together(TEXTS.text("notesView.second.undo"), List.of(
                    Edit.set(session.editingDomain(), review, Literals.REVIEW__SECOND, dialog.getValue().strip()),
                    Edit.set(session.editingDomain(), review, Literals.REVIEW__SECOND_AT, signature(dialog.getValue()).at()))));
        }
    }

    private static SecondSignature signature(String name) {
        return new SecondSignature(name, Instant.now().truncatedTo(ChronoUnit.MINUTES));
    }

    private Policies policies() {
        Policies chosen = session.event().getPolicies();
        return chosen != null ? chosen : StraddleFactory.eINSTANCE.createPolicies();
    }

    private LocalDate zoneToday() {
        return LocalDate.now(Outlook.zoneOf(session.event()));
    }

    private static Composite row(Composite body, int columns) {
        Composite row = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(columns).applyTo(row);
        row.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        return row;
    }
}
