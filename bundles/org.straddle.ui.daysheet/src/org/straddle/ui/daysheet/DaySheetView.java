package org.straddle.ui.daysheet;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.part.ViewPart;
import org.straddle.check.Finding;
import org.straddle.model.Identified;
import org.straddle.model.Snapshot;
import org.straddle.model.Team;
import org.straddle.ui.parts.EmptyOr;
import org.straddle.ui.parts.ThingSelection;
import org.straddle.ui.parts.WhileSeen;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.SessionListener;
import org.straddle.words.Catalogue;

/**
 * All teams over the same time: who is where, who drives, and who works which bird. Shows the last computation, and
 * says when a newer one is under way.
 */
public final class DaySheetView extends ViewPart implements SessionListener {

    private static final Catalogue TEXTS = Catalogue.of(DaySheetView.class);

    public static final String ID = "org.straddle.ui.daysheet.view";

    private final EventSession session = EventSession.current();
    private final ThingSelection selection = new ThingSelection();
    private final ISelectionListener follow = this::follow;
    private EmptyOr<SheetCanvas> pages;
    private SheetCanvas sheet;
    private SheetReader reader;
    private Computed last;
    private WhileSeen hearing;
    /** What {@link PlanPrint} says of the plan on the sheet. */
    private int shown;

    @Override
    public void createPartControl(Composite parent) {
        reader = new SheetReader(parent.getDisplay(), this::show);
        pages = new EmptyOr<>(parent, "", "", body -> new SheetCanvas(body, this::chosen, session::reveal));
        sheet = pages.content();
        getSite().setSelectionProvider(selection);
        getSite().getService(IContextService.class).activateContext(SheetActions.CONTEXT);
        PlanEdits edits = new PlanEdits(session, sheet);
        sheet.onDrop(edits::run);
        new SheetActions(getViewSite(), sheet);
        new EditActions(getViewSite(), sheet, new SelectedEdits(sheet, edits));
        getSite().getPage().addPostSelectionListener(follow);
        hearing = WhileSeen.hear(this, this);
        if (session.isOpen()) {
            opened(session);
            session.computed().ifPresent(computed -> computed(session, computed));
        } else {
            closed(session);
        }
    }

    @Override
    public void setFocus() {
        if (sheet.control().isVisible()) {
            sheet.control().setFocus();
        } else {
            pages.setFocus();
        }
    }

    @Override
    public void dispose() {
        reader.forget();
        hearing.stop();
        getSite().getPage().removePostSelectionListener(follow);
        super.dispose();
    }

    @Override
    public void opened(EventSession opened) {
        pages.say(TEXTS.text("daySheetView.computing"), TEXTS.text("daySheetView.passesOverSites"));
    }

    @Override
    public void closed(EventSession closed) {
        reader.forget();
        last = null;
        sheet.clear();
        selection.clear();
        pages.say(TEXTS.text("daySheetView.eventOpen"), TEXTS.text("daySheetView.openEventFolder"));
    }

    @Override
    public void edited(EventSession edited) {
        // Also comes when a computation has ended without a result.
        if (!session.computing() && session.computed().isEmpty()) {
            pages.say(TEXTS.text("daySheetView.nothingHasBeen"), TEXTS.text("daySheetView.computationStoppedFailed"));
        }
        // What was said about the edit before may not be true any more.
        sheet.say("", false);
        readAhead();
        note();
    }

    @Override
    public void computing(EventSession computing) {
        if (session.computed().isEmpty()) {
            opened(session);
        }
        note();
    }

    @Override
    public void computed(EventSession from, Computed computed) {
        last = computed;
        if (PlanPrint.of(computed.snapshot()) == PlanPrint.of(session.event())) {
            reader.read(computed);
        } else {
            readAhead();
        }
    }

    /** Shows a changed plan without waiting for the checks. */
    private void readAhead() {
        if (!session.isOpen() || last == null || sheet.sheet().isEmpty()) {
            return;
        }
        int now = PlanPrint.of(session.event());
        if (now != shown) {
            shown = now;
            sheet.behind();
            reader.readAhead(Snapshot.of(session.event()), last, session.folder().elements());
        }
    }

    private void show(Reading reading) {
        if (sheet.control().isDisposed() || !session.isOpen()
                || !reading.ahead() && session.computed().filter(newest -> newest == reading.computed()).isEmpty()) {
            return;
        }
        shown = PlanPrint.of(reading.computed().snapshot());
        if (reading.sheet().isPresent()) {
            pages.showContent(true);
            sheet.show(reading);
        } else {
            sheet.clear();
            List<Team> teams = reading.computed().snapshot().getTeams();
            pages.say(teams.isEmpty() ? TEXTS.text("daySheetView.eventHasTeams")
                    : teams.stream().allMatch(team -> team.getDays().isEmpty()) ? TEXTS.text("daySheetView.teamHasDay")
                    : TEXTS.text("daySheetView.dayTeamHas"),
                    TEXTS.text("daySheetView.eachTeamGets"));
        }
        note();
    }

    private void note() {
        sheet.note(session.computing() ? TEXTS.text("daySheetView.computing") : "");
    }

    private void chosen(Identified thing) {
        if (thing == null) {
            selection.clear();
        } else {
            session.live(thing.getId()).ifPresent(selection::select);
        }
    }

    private void follow(IWorkbenchPart part, ISelection chosen) {
        if (part != this && chosen instanceof IStructuredSelection things && !sheet.control().isDisposed()) {
            Set<String> ids = Stream.of(things.toArray()).flatMap(DaySheetView::named).map(Identified::getId)
                    .collect(Collectors.toSet());
            sheet.follow(ids);
        }
    }

    /** A finding stands for the things it is about. */
    private static Stream<Identified> named(Object chosen) {
        return chosen instanceof Finding finding ? finding.objects().stream()
                : chosen instanceof Identified thing ? Stream.of(thing) : Stream.empty();
    }
}
