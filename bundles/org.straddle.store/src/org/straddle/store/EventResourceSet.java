package org.straddle.store;

import java.util.LinkedHashMap;
import java.util.Map;

import javax.xml.parsers.SAXParser;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.StraddlePackage;
import org.straddle.words.Catalogue;
import org.xml.sax.SAXException;

/** The files of one event as objects. It never goes and loads what a reference names: all files are given to it. */
final class EventResourceSet extends ResourceSetImpl {

    private static final Catalogue TEXTS = Catalogue.of(EventResourceSet.class);

    private Map<String, Identified> named = Map.of();
    private SAXParser parser;

    EventResourceSet() {
        getPackageRegistry().put(StraddlePackage.eNS_URI, StraddlePackage.eINSTANCE);
        setURIResourceMap(new LinkedHashMap<>());
    }

    /** @param files the event's own file is the first */
    static EventResourceSet of(Map<String, byte[]> files) throws EventFolderException {
        EventResourceSet set = new EventResourceSet();
        Migration.prepare(set);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            set.create(file.getKey()).read(file.getValue());
        }
        set.event();
        try {
            EcoreUtil.resolveAll(set);
        } catch (RuntimeException e) {
            throw EventFolderException.causedBy(e, TEXTS.text("eventResourceSet.otherKind"), Layout.EVENT, TEXTS.text("eventResourceSet.restoreEventFolder"));
        }
        return set;
    }

    /** The objects are just what these files say: a save need not write again those that nobody changes. */
    void keep(Map<String, byte[]> files) throws EventFolderException {
        files.forEach((name, bytes) -> {
            if (Migration.isOfToday(bytes)) {
                ((EventResource) getResource(Layout.uri(name), false)).keep(bytes);
            }
        });
        try {
            named = FitToWrite.require(event());
        } catch (EventFolderException unfit) {
            // Whoever saves will be told.
            forget();
        }
    }

    /** A file that nobody changed is out of date when a thing that it names goes by another identity now. */
    void forgetOldNames(Map<String, Identified> now, Event event) {
        boolean renamed = named.entrySet().stream().anyMatch(before -> now.get(before.getKey()) != before.getValue()
                && EcoreUtil.isAncestor(event, before.getValue()));
        if (renamed) {
            forget();
        }
        named = now;
    }

    void forget() {
        getResources().forEach(resource -> ((EventResource) resource).forget());
    }

    /** One for all files, which are read one after the other. */
    SAXParser parser() throws SAXException {
        if (parser == null) {
            parser = HardenedXml.parser(false);
        }
        return parser;
    }

    EventResource create(String name) {
        EventResource resource = new EventResource(Layout.uri(name));
        getResources().add(resource);
        return resource;
    }

    Event event() throws EventFolderException {
        Resource resource = getResource(Layout.uri(Layout.EVENT), false);
        EObject root = resource.getContents().size() == 1 ? resource.getContents().get(0) : null;
        if (root instanceof Event event) {
            return event;
        }
        throw EventFolderException.of(
                TEXTS.text("eventResourceSet.doesNotHold"), Layout.EVENT, TEXTS.text("diskFiles.restoreFileFrom"));
    }

    @Override
    public Resource getResource(URI uri, boolean loadOnDemand) {
        return super.getResource(uri, false);
    }
}
