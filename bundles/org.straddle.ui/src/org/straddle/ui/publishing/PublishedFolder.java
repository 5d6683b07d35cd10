package org.straddle.ui.publishing;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import org.straddle.model.Event;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/** Where this user published an event last; at first a folder beside that of the event. */
final class PublishedFolder {

    private static final Catalogue TEXTS = Catalogue.of(PublishedFolder.class);

    private PublishedFolder() {
    }

    static Path of(Event event, Path folder) {
        String last = preferences().get(event.getId(), "");
        try {
            if (!last.isEmpty()) {
                return Path.of(last);
            }
        } catch (InvalidPathException ofAnotherSystem) {
            // as if there were none
        }
        Path beside = folder.toAbsolutePath();
        return beside.resolveSibling(beside.getFileName() + "-published");
    }

    static void remember(Event event, Path folder) {
        preferences().put(event.getId(), folder.toString());
        try {
            preferences().flush();
        } catch (BackingStoreException lost) {
            Problem.log(TEXTS.text("publishedFolder.lost"), lost);
        }
    }

    private static IEclipsePreferences preferences() {
        return InstanceScope.INSTANCE.getNode("org.straddle.ui/published");
    }
}
