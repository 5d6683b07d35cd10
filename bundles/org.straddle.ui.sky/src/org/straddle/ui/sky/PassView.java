package org.straddle.ui.sky;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.part.ViewPart;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.parts.EmptyOr;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.SessionListener;
import org.straddle.ui.sky.pass.PassSheet;
import org.straddle.ui.sky.pass.SheetWords;

/**
 * The sheet of one pass: its arc over the skyline of the site, times, directions, Doppler and light. Follows what is
 * selected elsewhere.
 */
public final class PassView extends ViewPart implements SessionListener {

    public static final String ID = "org.straddle.ui.sky.pass";

    /** Below this height the tables stand beside each other. */
    private static final int LOW_PX = 430;
    /** Below this width the tables stand below the picture. */
    private static final int NARROW_PX = 760;

    private final EventSession session = EventSession.current();
    private final ISelectionListener follow = this::follow;
    private final Runnable chosen = this::refresh;
    private EmptyOr<Composite> pages;
    private PassChooser chooser;
    private SashForm halves;
    private SashForm tables;
    private PassCanvas picture;
    private Label reading;
    private MomentTable moments;
    private FactsText facts;
    private Latest<Question, Optional<PassSheet>> reader;
    private PassSheet sheet;
    private boolean arranged;

    /** A pass of an outlook that is to be shown. */
    private record Question(Outlook outlook, SitePass found) {
    }

    @Override
    public void createPartControl(Composite parent) {
        reader = new Latest<>("Pass sheet", parent.getDisplay(),
                question -> PassSheet.of(question.outlook(), question.found()), this::show, this::failed);
        pages = new EmptyOr<>(parent, "", "", this::content);
        getSite().getService(IContextService.class).activateContext(SkyActions.CONTEXT);
        new SkyActions(getViewSite()).add(() -> PassExport.ask(getSite().getShell(), picture, sheet));
        getSite().getPage().addPostSelectionListener(follow);
        session.addListener(this);
        ChosenPass.current().addListener(chosen);
        refresh();
    }

    @Override
    public void dispose() {
        reader.forget();
        ChosenPass.current().removeListener(chosen);
        session.removeListener(this);
        getSite().getPage().removePostSelectionListener(follow);
        super.dispose();
    }

    @Override
    public void setFocus() {
        if (sheet != null) {
            chooser.setFocus();
        } else {
            pages.setFocus();
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
    public void computed(EventSession from, Computed computed) {
        refresh();
    }

    private void refresh() {
        if (!session.isOpen()) {
            say("No event is open.", "Open an event folder, make a new event, or look at the demo event.");
            return;
        }
        if (session.computed().isEmpty()) {
            say("Finding passes…", "The sheet of a pass appears when the passes are known.");
            return;
        }
        Outlook outlook = session.computed().get().outlook();
        ChosenPass.current().in(outlook).ifPresentOrElse(found -> {
            chooser.show(outlook, found);
            reader.ask(new Question(outlook, found));
        }, () -> say("No passes.", "A pass needs a site with a position, a bird with element sets near the event's"
                + " days, and days. File, Import element sets brings element sets."));
    }

    private void say(String heading, String sentence) {
        reader.forget();
        sheet = null;
        pages.say(heading, sentence);
    }

    private void show(Optional<PassSheet> answer) {
        if (halves.isDisposed()) {
            return;
        }
        if (answer.isEmpty()) {
            say("The bird cannot be followed.", "It has no element set that can be used. File, Import element sets"
                    + " brings one.");
            return;
        }
        sheet = answer.get();
        SheetWords words = new SheetWords(sheet);
        picture.show(sheet);
        moments.show(words.moments());
        facts.show(words.facts());
        pages.showContent(true);
    }

    private void failed(Question question, RuntimeException failure) {
        say("This pass cannot be drawn.", (failure.getMessage() == null ? failure.toString() : failure.getMessage())
                + ". Choose another pass, or import newer element sets.");
    }

    private Composite content(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(body);
        chooser = new PassChooser(body);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(chooser.control());
        halves = new SashForm(body, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
        Composite left = new Composite(halves, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(left);
        picture = new PassCanvas(left, words -> read(words));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(picture.control());
        reading = new Label(left, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 2).applyTo(reading);
        tables = new SashForm(halves, SWT.VERTICAL | SWT.SMOOTH);
        moments = new MomentTable(tables);
        facts = new FactsText(tables, "About this pass");
        halves.addListener(SWT.Resize, event -> arrange());
        read("");
        return body;
    }

    private void read(String words) {
        if (reading != null) {
            reading.setText(words.isEmpty() ? "Point at the arc, or use the arrow keys in the picture." : words);
        }
    }

    private void arrange() {
        Rectangle area = halves.getClientArea();
        boolean narrow = area.width < NARROW_PX;
        boolean stacked = !narrow && area.height >= LOW_PX;
        int across = narrow ? SWT.VERTICAL : SWT.HORIZONTAL;
        int down = stacked ? SWT.VERTICAL : SWT.HORIZONTAL;
        if (!arranged || halves.getOrientation() != across || tables.getOrientation() != down) {
            arranged = true;
            halves.setOrientation(across);
            tables.setOrientation(down);
            halves.setWeights(stacked ? new int[] {60, 40} : new int[] {53, 47});
            tables.setWeights(stacked ? new int[] {40, 60} : new int[] {60, 40});
        }
    }

    private void follow(IWorkbenchPart from, ISelection selection) {
        if (from != this && session.isOpen() && session.computed().isPresent()
                && selection instanceof IStructuredSelection things && !things.isEmpty()) {
            Outlook outlook = session.computed().get().outlook();
            Pointed.at(things.getFirstElement(), outlook, ChosenPass.current().in(outlook))
                    .ifPresent(ChosenPass.current()::choose);
        }
    }
}
