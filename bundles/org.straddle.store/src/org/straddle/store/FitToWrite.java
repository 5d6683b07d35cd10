package org.straddle.store;

import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.InertText;
import org.straddle.words.Catalogue;

/**
 * Makes sure, before a save touches the disk, that the files will be readable again: every object has an identity of
 * its own, refers only to objects of the same event, and holds only characters that XML can carry.
 */
final class FitToWrite {

    private static final Catalogue TEXTS = Catalogue.of(FitToWrite.class);

    private final Event event;
    private final Map<String, Identified> identities = new HashMap<>();

    private FitToWrite(Event event) {
        this.event = event;
    }

    /** @return the objects by the identities that files name them by */
    static Map<String, Identified> require(Event event) throws EventFolderException {
        FitToWrite fit = new FitToWrite(event);
        fit.run();
        return fit.identities;
    }

    private void run() throws EventFolderException {
        identify(event);
        event.eAllContents().forEachRemaining(this::identify);
        refuseUnfit(event);
        for (var all = event.eAllContents(); all.hasNext();) {
            refuseUnfit(all.next());
        }
    }

    /** A new object from a generic editor has no id, a pasted one has that of its original. */
    private void identify(EObject object) {
        if (object instanceof Identified identified) {
            if (identified.getId() == null || identities.containsKey(identified.getId())) {
                identified.setId(UUID.randomUUID().toString());
            }
            identities.put(identified.getId(), identified);
        }
    }

    private void refuseUnfit(EObject object) throws EventFolderException {
        for (EReference reference : object.eClass().getEAllReferences()) {
            if (!reference.isContainment() && !reference.isContainer() && object.eIsSet(reference)) {
                for (Object target : values(object, reference)) {
                    if (!EcoreUtil.isAncestor(event, (EObject) target)) {
                        throw refuse(object, reference, TEXTS.text("fitToWrite.refersWhichNot",
                                "target", label((EObject) target)),
                                TEXTS.text("fitToWrite.undoRemovalChoose", "reference", reference.getName()));
                    }
                }
            }
        }
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            if (attribute.getEAttributeType().getInstanceClass() == String.class && object.eIsSet(attribute)) {
                for (Object text : values(object, attribute)) {
                    int at = InertText.firstNotStorable((String) text);
                    if (at >= 0) {
                        throw refuse(object, attribute, TEXTS.text("fitToWrite.holdsControlCharacter",
                                "code", HexFormat.of().withUpperCase().toHexDigits(((String) text).charAt(at)), "place", at + 1),
                                TEXTS.text("fitToWrite.deleteCharacterType"));
                    }
                }
            }
        }
    }

    private static List<?> values(EObject object, EStructuralFeature feature) {
        return feature.isMany() ? (List<?>) object.eGet(feature) : List.of(object.eGet(feature));
    }

    private EventFolderException refuse(EObject object, EStructuralFeature feature, String what, String whatToDo) {
        return EventFolderException.of(TEXTS.text("fitToWrite.its", "feature", feature.getName(),
                "what", what), label(object), whatToDo);
    }

    /** Kind and name of the object, or of the nearest thing around it that has a name. */
    static String label(EObject object) {
        EStructuralFeature name = object.eClass().getEStructuralFeature("name");
        Object text = name == null ? null : object.eGet(name);
        if (text != null) {
            return object.eClass().getName() + " " + text;
        }
        EObject container = object.eContainer();
        return object.eClass().getName() + (container == null ? "" : TEXTS.text("fitToWrite.of",
                "container", label(container)));
    }
}
