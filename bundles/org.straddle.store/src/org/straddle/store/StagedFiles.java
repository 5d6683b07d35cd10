package org.straddle.store;

import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

import org.straddle.model.Bird;
import org.straddle.model.BirdElements;
import org.straddle.model.Event;
import org.straddle.model.Layer;
import org.straddle.model.Photo;
import org.straddle.model.Site;
import org.straddle.model.Visit;

/**
 * Files that were brought in since the last save, such as an imported file of element sets. They wait in memory: the
 * save writes those that the event names by then, so an import that was undone, refused or cancelled leaves nothing
 * on the disk, and one that was done again still has its file. Any thread may use it.
 */
final class StagedFiles {

    private final Map<String, byte[]> waiting = new LinkedHashMap<>();

    /** The waiting bytes, or null. */
    synchronized byte[] get(String name) {
        return waiting.get(name);
    }

    synchronized void put(String name, byte[] bytes) {
        waiting.put(name, bytes);
    }

    /** What was written, unless it was brought in anew since. */
    synchronized void remove(Map<String, byte[]> written) {
        written.forEach(waiting::remove);
    }

    synchronized boolean holds(String name, byte[] bytes) {
        return Arrays.equals(waiting.get(name), bytes);
    }

    /** The waiting files that the event names. */
    synchronized Map<String, byte[]> namedBy(Event event) {
        Set<String> named = new HashSet<>();
        for (Bird bird : event.getBirds()) {
            for (BirdElements elements : bird.getElementSets()) {
                named.add(Layout.ELEMENTS + "/" + elements.getFile());
            }
        }
        for (Site site : event.getSites()) {
            for (Visit visit : site.getVisits()) {
                for (Photo photo : visit.getPhotos()) {
                    named.add(Layout.PHOTOS + "/" + photo.getFile());
                }
            }
        }
        for (Layer layer : event.getLayers()) {
            named.add(Layout.LAYERS + "/" + layer.getFile());
        }
        Map<String, byte[]> files = new LinkedHashMap<>();
        waiting.forEach((name, bytes) -> {
            if (named.contains(name)) {
                files.put(name, bytes);
            }
        });
        return files;
    }
}
