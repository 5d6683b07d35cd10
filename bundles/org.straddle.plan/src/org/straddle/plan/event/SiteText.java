package org.straddle.plan.event;

import org.straddle.model.Site;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;

/** A site with its squares, because a plan is about squares. */
final class SiteText {

    private static final Catalogue TEXTS = Catalogue.of(SiteText.class);

    private SiteText() {
    }

    /** {@code Old pier (HP94, IP04)}. */
    static String of(Site site) {
        return site.getSquares().isEmpty() ? Naming.name(site)
                : TEXTS.text("site.squares", "site", Naming.name(site), "squares", String.join(", ", site.getSquares()));
    }
}
