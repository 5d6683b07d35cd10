package org.straddle.ui.folder;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import org.straddle.ui.work.Problem;
import org.straddle.words.Catalogue;

/** The event folders that were opened last, newest first. */
public final class RecentEvents {

    private static final Catalogue TEXTS = Catalogue.of(RecentEvents.class);

    private static final int KEPT = 5;
    private static final String KEY = "recent";

    private RecentEvents() {
    }

    public static List<Path> list() {
        return Stream.of(preferences().get(KEY, "").split("\n")).filter(line -> !line.isBlank()).map(Path::of)
                .filter(Files::isDirectory).toList();
    }

    public static void add(Path path) {
        List<Path> recent = new ArrayList<>(list());
        recent.remove(path);
        recent.add(0, path);
        preferences().put(KEY, String.join("\n", recent.stream().limit(KEPT).map(Path::toString).toList()));
        try {
            preferences().flush();
        } catch (BackingStoreException lost) {
            // The list is a convenience: losing it must not disturb the work.
            Problem.log(TEXTS.text("recentEvents.lost"), lost);
        }
    }

    private static IEclipsePreferences preferences() {
        return InstanceScope.INSTANCE.getNode("org.straddle.ui");
    }
}
