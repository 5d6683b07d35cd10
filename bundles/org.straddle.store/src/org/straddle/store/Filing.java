package org.straddle.store;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;

import org.eclipse.emf.common.util.ECollections;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.straddle.model.Event;
import org.straddle.model.StraddlePackage;

/**
 * Sees to it that every object of an event lies in its file. A file is named after its object when the object is
 * first filed, and keeps that name: a renamed site is the same file, and its history stays in one place. An object
 * that left the event keeps its file in memory, so that undo brings it back to where it was.
 */
final class Filing {

    private static final StraddlePackage MODEL = StraddlePackage.eINSTANCE;

    private final EventResourceSet set;
    private final Predicate<String> taken;
    private final Map<String, EventResource> files = new LinkedHashMap<>();

    private Filing(EventResourceSet set, Predicate<String> taken) {
        this.set = set;
        this.taken = taken;
    }

    /**
     * @param taken names of files that must not be given to a new object, besides those in the set
     * @return every file that the event now consists of, by name; the event's own file is the first
     */
    static Map<String, EventResource> file(EventResourceSet set, Event event, Predicate<String> taken) {
        Filing filing = new Filing(set, taken);
        filing.fill(Layout.EVENT, List.of(event));
        for (EReference containment : MODEL.getEvent().getEAllContainments()) {
            if (Layout.folderOf(containment) != null) {
                filing.fileEach(Layout.folderOf(containment), (List<?>) event.eGet(containment));
            }
        }
        filing.fill(Layout.BIRDS, event.getBirds());
        filing.fill(Layout.PLAN, event.getPlan() == null ? List.of() : List.of(event.getPlan()));
        return filing.files;
    }

    private void fileEach(String folder, List<?> objects) {
        for (Object each : objects) {
            EObject object = (EObject) each;
            Resource own = ((InternalEObject) object).eDirectResource();
            String name = own instanceof EventResource resource && own.getResourceSet() == set ? resource.name()
                    : freshName(folder, object);
            fill(name, List.of(object));
        }
    }

    private String freshName(String folder, EObject object) {
        String kind = object.eClass().getName().toLowerCase(Locale.ROOT);
        EStructuralFeature name = object.eClass().getEStructuralFeature("name");
        String slug = Slug.of(name instanceof EAttribute ? (String) object.eGet(name) : null, kind);
        return folder + "/" + Slug.unique(slug, each -> {
            String file = folder + "/" + each + ".xmi";
            return set.getResource(Layout.uri(file), false) != null || taken.test(file);
        }) + ".xmi";
    }

    private void fill(String name, Collection<? extends EObject> objects) {
        URI uri = Layout.uri(name);
        EventResource resource = (EventResource) set.getResource(uri, false);
        if (resource == null) {
            if (objects.isEmpty()) {
                return;
            }
            resource = set.create(name);
        }
        ECollections.setEList(resource.getContents(), List.copyOf(objects));
        if (!objects.isEmpty()) {
            files.put(name, resource);
        }
    }
}
