package org.straddle.model;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
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
        Copier copier = new Copier();
        Event copy = (Event) copier.copy(event);
        copier.copyReferences();
        return copy;
    }

    /** Copies as its parent does, without asking each feature of each thing what it is. */
    private static final class Copier extends EcoreUtil.Copier {

        private static final long serialVersionUID = 1;

        @Override
        public EObject copy(EObject thing) {
            EObject copy = createCopy(thing);
            Features features = Features.of(thing.eClass());
            // What nothing points at and what points at nothing is not looked for later.
            if (features.isTarget() || features.references().length > 0) {
                put(thing, copy);
            }
            for (EAttribute attribute : features.attributes()) {
                copyAttribute(attribute, thing, copy);
            }
            for (EReference reference : features.contained()) {
                copyContainment(reference, thing, copy);
            }
            copyProxyURI(thing, copy);
            return copy;
        }

        @Override
        public void copyReferences() {
            forEach((thing, copy) -> {
                for (EReference reference : Features.of(thing.eClass()).references()) {
                    copyReference(reference, thing, copy);
                }
            });
        }
    }
}
