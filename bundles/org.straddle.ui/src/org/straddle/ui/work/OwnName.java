package org.straddle.ui.work;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import org.straddle.words.Catalogue;

/** The user's own name or call sign, typed once: it is offered wherever somebody signs. */
public final class OwnName {

    private static final Catalogue TEXTS = Catalogue.of(OwnName.class);

    private static final String KEY = "own-name";

    private OwnName() {
    }

    /** As it was typed last; empty when it never was. */
    public static String last() {
        return preferences().get(KEY, "");
    }

    public static void remember(String name) {
        if (name.isBlank() || name.strip().equals(last())) {
            return;
        }
        preferences().put(KEY, name.strip());
        try {
            preferences().flush();
        } catch (BackingStoreException lost) {
            Problem.log(TEXTS.text("ownName.lost"), lost);
        }
    }

    private static IEclipsePreferences preferences() {
        return InstanceScope.INSTANCE.getNode("org.straddle.ui");
    }
}
