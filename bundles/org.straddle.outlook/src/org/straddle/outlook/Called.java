package org.straddle.outlook;

import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.InertText;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Region;
import org.straddle.model.Site;
import org.straddle.words.Catalogue;

/** What to call a thing that may have no name yet. */
final class Called {

    private static final Catalogue TEXTS = Catalogue.of(Called.class);

    private Called() {
    }

    static String of(Site site) {
        return of(site.getName(), TEXTS.text("called.site"));
    }

    static String of(Base base) {
        return of(base.getName(), TEXTS.text("called.base"));
    }

    static String of(Bird bird) {
        return of(bird.getName(), TEXTS.text("called.bird"));
    }

    static String of(Region region) {
        return of(region.getName(), TEXTS.text("called.region"));
    }

    static String of(Jurisdiction jurisdiction) {
        return of(jurisdiction.getName(), TEXTS.text("called.jurisdiction"));
    }

    private static String of(String name, String kind) {
        return name == null || name.isBlank() ? TEXTS.text("called.withoutName", "kind", kind) : InertText.line(name);
    }
}
