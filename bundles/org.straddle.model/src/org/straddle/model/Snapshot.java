package org.straddle.model;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * A copy of an event that later edits do not reach, so that long work may read it on another thread. Objects keep
 * their ids: {@link Identified#getId()} leads from a result back to the live object.
 */
public final class Snapshot {

    private Snapshot() {
    }

    /** Copies the whole event with all that it contains; call it on the thread that edits the event. */
    public static Event of(Event event) {
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
            EObject copy = EcoreUtil.create(thing.eClass());
            Features features = Features.of(thing.eClass());
            // What nothing points at and what points at nothing is not looked for later.
            if (features.isTarget() || features.references().length > 0) {
                put(thing, copy);
            }
            for (Features.Slot attribute : features.attributes()) {
                if (attribute.isSet(thing)) {
                    copyValue(attribute, thing, copy);
                }
            }
            for (Features.Slot containment : features.contained()) {
                if (containment.isSet(thing)) {
                    copyContents(containment, thing, copy);
                }
            }
            copyProxyURI(thing, copy);
            return copy;
        }

        @SuppressWarnings("unchecked") // both lists are those of one feature
        private static void copyValue(Features.Slot attribute, EObject thing, EObject copy) {
            if (attribute.isMany()) {
                ((List<Object>) attribute.all(copy)).addAll(attribute.all(thing));
            } else {
                attribute.set(copy, attribute.get(thing, true));
            }
        }

        @SuppressWarnings("unchecked") // what is contained are things
        private void copyContents(Features.Slot containment, EObject thing, EObject copy) {
            if (containment.isMany()) {
                InternalEList<EObject> copies = (InternalEList<EObject>) containment.all(copy);
                // A new copy is in no list yet, so no list need look for it.
                containment.all(thing).forEach(inner -> copies.addUnique(copy((EObject) inner)));
            } else {
                containment.set(copy, copy((EObject) containment.get(thing, true)));
            }
        }

        @Override
        public void copyReferences() {
            forEach((thing, copy) -> {
                for (Features.Slot reference : Features.of(thing.eClass()).references()) {
                    if (reference.isSet(thing)) {
                        copyReference((EReference) reference.feature(), thing, copy);
                    }
                }
            });
        }
    }
}
