package org.straddle.model;

import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A copy of an event that later edits do not reach, so that long work may read it on another thread. Objects keep
 * their ids: {@link Identified#getId()} leads from a result back to the live object.
 */
public final class Snapshot {

    private Snapshot() {
    }

    /** Copies the whole event with all that it contains; call it on the thread that edits the event. */
    public static Event of(Event event) {
        EcoreUtil.resolveAll(event);
        return EcoreUtil.copy(event);
    }
}
