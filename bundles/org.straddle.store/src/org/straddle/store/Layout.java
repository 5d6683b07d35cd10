package org.straddle.store;

import java.util.List;
import java.util.regex.Pattern;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EReference;
import org.straddle.model.StraddlePackage;

/**
 * Which file of an event folder holds what. Names are relative to the folder and use {@code /}. Only names that fit
 * are ever read, written or removed, so that a folder from somebody else cannot point out of itself.
 */
final class Layout {

    static final String EVENT = "event.straddle";
    static final String BIRDS = "birds.xmi";
    static final String PLAN = "plan.xmi";
    static final String ELEMENTS = "elements";
    static final String LAYERS = "layers";
    static final String PHOTOS = "photos";

    /** Folders whose files are kept as they came. */
    static final List<String> KEPT_AS_THEY_CAME = List.of(ELEMENTS, LAYERS, PHOTOS);

    /** Every folder of an event. */
    static final List<String> FOLDERS = List.of("operators", "teams", "kits", "sites", ELEMENTS, LAYERS, PHOTOS);

    private static final Pattern MODEL_FILE = Pattern
            .compile("event\\.straddle|birds\\.xmi|plan\\.xmi|(operators|teams|kits|sites)/[^/\\\\:\\p{Cntrl}]+\\.xmi");
    private static final Pattern KEPT_FILE = Pattern
            .compile("(elements|layers|photos)(/(?!\\.{1,2}(/|$))[^/\\\\:\\p{Cntrl}]+)+");

    private Layout() {
    }

    /** Does the name belong to a file that the event's objects are written to? */
    static boolean isModelFile(String name) {
        return MODEL_FILE.matcher(name).matches();
    }

    /** Does the name belong to a file that a save may touch? */
    static boolean isEventFile(String name) {
        return isModelFile(name) || KEPT_FILE.matcher(name).matches();
    }

    /** Folder with one file for each object of a containment of Event, or null when the containment has one file. */
    static String folderOf(EReference containment) {
        return switch (containment.getFeatureID()) {
            case StraddlePackage.EVENT__OPERATORS -> "operators";
            case StraddlePackage.EVENT__TEAMS -> "teams";
            case StraddlePackage.EVENT__KITS -> "kits";
            case StraddlePackage.EVENT__SITES -> "sites";
            default -> null;
        };
    }

    /**
     * The address of a file within its event. It does not say where the folder lies, so references between files are
     * relative by construction and a folder can be moved or copied.
     */
    static URI uri(String name) {
        return URI.createHierarchicalURI("event", null, null, name.split("/"), null, null);
    }

    static String name(URI uri) {
        return String.join("/", uri.segments());
    }
}
