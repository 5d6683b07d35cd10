package org.straddle.ui.session;

/**
 * Hears what happens to the window's event. All calls come on the UI thread; a listener stays registered while
 * events are opened and closed.
 */
public interface SessionListener {

    /** An event has been opened; nothing is computed yet. */
    default void opened(EventSession session) {
    }

    /** The event has been closed; {@link EventSession#isOpen()} is now false. */
    default void closed(EventSession session) {
    }

    /** The event was changed by a command, an undo or a redo, or it was saved: labels and dirty marks may differ. */
    default void edited(EventSession session) {
    }

    /** Passes and findings are being computed anew; the last ones stay available until then. */
    default void computing(EventSession session) {
    }

    /** A computation was cancelled or failed; the last results stay, and may be none. */
    default void stopped(EventSession session) {
    }

    /** Passes and findings fit the event as it was a moment ago. */
    default void computed(EventSession session, Computed computed) {
    }
}
