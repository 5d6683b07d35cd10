package org.straddle.ui.sky;

import java.util.Optional;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.part.ViewPart;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.parts.EmptyOr;
import org.straddle.ui.parts.WhileSeen;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.NewestJob;
import org.straddle.ui.session.SessionListener;
import org.straddle.words.Catalogue;

/**
 * A view of one pass, with a chooser above: it follows what is selected elsewhere, has its content worked out off the
 * UI thread, and says what is missing when there is nothing to show.
 *
 * @param <S> the sheet that it shows
 */
abstract class SkyView<S> extends ViewPart implements SessionListener {

    private static final Catalogue TEXTS = Catalogue.of(SkyView.class);

    private static final String CANNOT_BE_SHOWN = TEXTS.text("skyView.passCannotShown");

    private final EventSession session = EventSession.current();
    private final ISelectionListener follow = this::follow;
    private final Runnable refresh = this::refresh;
    private final Runnable chosen = this::chosen;
    private WhileSeen hearing;
    private EmptyOr<Control> pages;
    private PassChooser chooser;
    private NewestJob<Optional<S>> reader;
    private S sheet;

    /** Works the sheet out, off the UI thread; empty when it cannot be known. */
    abstract Optional<S> read(Outlook outlook, SitePass found);

    /** Makes the controls below the chooser. */
    abstract Control content(Composite parent);

    /** Shows a sheet in the controls. */
    abstract void fill(S newest);

    /** What there is to say instead of an empty answer, as a heading and a sentence. */
    abstract String[] missing();

    /** Prints or exports what is shown. */
    abstract void export(S shown);

    @Override
    public final void createPartControl(Composite parent) {
        reader = new NewestJob<>(parent.getDisplay(), new NewestJob.Kind(getTitle(), false, Job.SHORT, CANNOT_BE_SHOWN));
        pages = new EmptyOr<>(parent, "", "", this::body);
        getSite().getService(IContextService.class).activateContext(SkyActions.CONTEXT);
        new SkyActions(getViewSite()).add(() -> {
            if (sheet != null) {
                export(sheet);
            }
        });
        getSite().getPage().addPostSelectionListener(follow);
        hearing = WhileSeen.hear(this, this);
        ChosenPass.current().addListener(chosen);
        refresh();
    }

    private Control body(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(body);
        chooser = new PassChooser(body);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(chooser.control());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(content(body));
        return body;
    }

    @Override
    public final void dispose() {
        reader.stop();
        ChosenPass.current().removeListener(chosen);
        hearing.stop();
        getSite().getPage().removePostSelectionListener(follow);
        super.dispose();
    }

    @Override
    public final void setFocus() {
        if (sheet != null) {
            chooser.setFocus();
        } else {
            pages.setFocus();
        }
    }

    @Override
    public final void opened(EventSession opened) {
        refresh();
    }

    @Override
    public final void closed(EventSession closed) {
        refresh();
    }

    @Override
    public final void computed(EventSession from, Computed computed) {
        refresh();
    }

    private void chosen() {
        hearing.run(refresh);
    }

    private void refresh() {
        if (!session.isOpen()) {
            say(TEXTS.text("skyView.eventOpen"), TEXTS.text("skyView.openEventFolder"));
            return;
        }
        if (session.computed().isEmpty()) {
            say(TEXTS.text("skyView.findingPasses"), TEXTS.text("skyView.passShownHere"));
            return;
        }
        Outlook outlook = session.computed().get().outlook();
        ChosenPass.current().in(outlook).ifPresentOrElse(found -> {
            chooser.show(outlook, found);
            reader.run(monitor -> read(outlook, found), this::show, this::failed);
        }, () -> say(TEXTS.text("skyView.passes"), TEXTS.text("skyView.passNeedsSite")));
    }

    private void say(String heading, String sentence) {
        reader.stop();
        sheet = null;
        pages.say(heading, sentence);
    }

    private void show(Optional<S> answer) {
        if (pages.control().isDisposed()) {
            return;
        }
        if (answer.isEmpty()) {
            say(missing()[0], missing()[1]);
            return;
        }
        sheet = answer.get();
        fill(sheet);
        pages.showContent(true);
    }

    private void failed(Throwable failure) {
        if (!pages.control().isDisposed()) {
            say(CANNOT_BE_SHOWN, TEXTS.text("skyView.choosePassImport",
                    "reason", failure.getMessage() == null ? failure.toString() : failure.getMessage()));
        }
    }

    private void follow(IWorkbenchPart from, ISelection selection) {
        if (!(from instanceof SkyView) && session.isOpen() && session.computed().isPresent()
                && selection instanceof IStructuredSelection things && !things.isEmpty()) {
            Outlook outlook = session.computed().get().outlook();
            Pointed.at(things.getFirstElement(), outlook, ChosenPass.current().in(outlook))
                    .ifPresent(ChosenPass.current()::choose);
        }
    }
}
