package org.straddle.outlook;

import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Region;
import org.straddle.model.Site;

/** What to call a thing that may have no name yet. */
final class Called {

    private Called() {
    }

    static String of(Site site) {
        return of(site.getName(), "a site");
    }

    static String of(Base base) {
        return of(base.getName(), "a base");
    }

    static String of(Bird bird) {
        return of(bird.getName(), "a bird");
    }

    static String of(Region region) {
        return of(region.getName(), "a region");
    }

    static String of(Jurisdiction jurisdiction) {
        return of(jurisdiction.getName(), "a jurisdiction");
    }

    private static String of(String name, String kind) {
        return name == null || name.isBlank() ? kind + " without a name" : name;
    }
}
