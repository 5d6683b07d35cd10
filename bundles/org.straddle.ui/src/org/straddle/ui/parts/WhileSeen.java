package org.straddle.ui.parts;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.SessionListener;

/**
 * Hears the session for a part of the window. What changes while the part is hidden is told once it comes to the front, as it
 * stands then: nothing is worked out or laid out that nobody sees. That an event is opened or closed is told at once, because
 * a part lets go of the event with it. UI thread only.
 */
public final class WhileSeen implements SessionListener, IPartListener2 {

    private final EventSession session = EventSession.current();
    private final IWorkbenchPart part;
    private final SessionListener told;
    private final Runnable edited = this::tellEdited;
    private final Runnable computing = this::tellComputing;
    private final Runnable stopped = this::tellStopped;
    private final Runnable computed = this::tellComputed;
    /** What is to be done once the part is seen, the newest last. */
    private final Set<Runnable> missed = new LinkedHashSet<>();
    private boolean over;

    private WhileSeen(IWorkbenchPart part, SessionListener told) {
        this.part = part;
        this.told = told;
    }

    /** Begins to hear for a part that has a site; {@link #stop} ends it. */
    public static WhileSeen hear(IWorkbenchPart part, SessionListener told) {
        WhileSeen hearing = new WhileSeen(part, told);
        hearing.session.addListener(hearing);
        part.getSite().getPage().addPartListener(hearing);
        return hearing;
    }

    /** Nothing is told any more, not even of what the session is telling just now. */
    public void stop() {
        over = true;
        missed.clear();
        session.removeListener(this);
        part.getSite().getPage().removePartListener(this);
    }

    /** Runs now, or once the part is seen; however often it was asked for meanwhile, it then runs once. */
    public void run(Runnable step) {
        if (over) {
            return;
        }
        if (part.getSite().getPage().isPartVisible(part)) {
            catchUp();
            step.run();
        } else {
            missed.remove(step);
            missed.add(step);
        }
    }

    private void catchUp() {
        List<Runnable> steps = List.copyOf(missed);
        missed.clear();
        steps.forEach(Runnable::run);
    }

    @Override
    public void opened(EventSession opened) {
        missed.clear();
        if (!over) {
            told.opened(opened);
        }
    }

    @Override
    public void closed(EventSession closed) {
        missed.clear();
        if (!over) {
            told.closed(closed);
        }
    }

    @Override
    public void edited(EventSession from) {
        run(edited);
    }

    @Override
    public void computing(EventSession from) {
        run(computing);
    }

    @Override
    public void stopped(EventSession from) {
        run(stopped);
    }

    @Override
    public void computed(EventSession from, Computed newest) {
        run(computed);
    }

    private void tellEdited() {
        told.edited(session);
    }

    private void tellComputing() {
        if (session.computing()) {
            told.computing(session);
        }
    }

    private void tellStopped() {
        if (!session.computing()) {
            told.stopped(session);
        }
    }

    private void tellComputed() {
        session.computed().ifPresent(newest -> told.computed(session, newest));
    }

    @Override
    public void partVisible(IWorkbenchPartReference seen) {
        if (seen.getPart(false) == part) {
            catchUp();
        }
    }

    @Override
    public void partActivated(IWorkbenchPartReference active) {
        partVisible(active);
    }

    @Override
    public void partBroughtToTop(IWorkbenchPartReference top) {
        partVisible(top);
    }
}
