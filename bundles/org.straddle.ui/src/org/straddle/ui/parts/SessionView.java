package org.straddle.ui.parts;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.SessionListener;
import org.straddle.words.Catalogue;

/**
 * A view of the window's event. It hears the session from its creation on, catches up with what is already open and
 * computed, and says so when there is no event. While it is hidden it does nothing; see {@link WhileSeen}.
 *
 * @param <T> what the view shows while an event is open
 */
public abstract class SessionView<T> extends ViewPart implements SessionListener {

    private static final Catalogue TEXTS = Catalogue.of(SessionView.class);

    private static final String NO_EVENT = TEXTS.text("sessionView.closed");

    private final EventSession session = EventSession.current();
    private final String withoutEvent;
    private EmptyOr<T> pages;
    private WhileSeen hearing;

    /** @param withoutEvent a sentence for the time when no event is open */
    protected SessionView(String withoutEvent) {
        this.withoutEvent = withoutEvent;
    }

    /** Makes the controls, once. */
    protected abstract T content(Composite parent);

    /** Adds menus, tools and keys to the content, once. */
    protected abstract void equip(T content);

    protected final EventSession session() {
        return session;
    }

    protected final EmptyOr<T> pages() {
        return pages;
    }

    /** Runs now, or once the view is seen. */
    protected final void whileSeen(Runnable step) {
        hearing.run(step);
    }

    @Override
    public final void createPartControl(Composite parent) {
        pages = new EmptyOr<>(parent, NO_EVENT, withoutEvent, this::content);
        equip(pages.content());
        hearing = WhileSeen.hear(this, this);
        if (session.isOpen()) {
            opened(session);
            session.computed().ifPresent(computed -> computed(session, computed));
        }
    }

    @Override
    public void closed(EventSession closed) {
        pages.say(NO_EVENT, withoutEvent);
    }

    @Override
    public void setFocus() {
        pages.setFocus();
    }

    @Override
    public void dispose() {
        hearing.stop();
        super.dispose();
    }
}
