package org.straddle.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Locale;

import org.straddle.model.Event;
import org.straddle.model.InertText;
import org.straddle.model.SitesTaken;
import org.straddle.plan.SiteUse;
import org.straddle.words.Catalogue;

/** Which sites a search may use, for this search only; the event keeps its own choice. */
enum SitesChoice {

    READY(SitesTaken.ONLY_READY), READY_FIRST(SitesTaken.READY_FIRST), ALL(SitesTaken.ALL);

    private static final Catalogue TEXTS = Catalogue.of(SitesChoice.class);

    private final SitesTaken taken;

    SitesChoice(SitesTaken taken) {
        this.taken = taken;
    }

    /** @param snapshot a copy of the event */
    void in(Event snapshot) {
        SiteUse.take(taken, snapshot);
    }

    /** @throws WrongInput for any other word */
    static SitesChoice called(String word) {
        return Arrays.stream(values()).filter(choice -> choice.word().equals(word)).findFirst()
                .orElseThrow(() -> new WrongInput(TEXTS.text("sitesChoice.unknown", "word", InertText.line(word), "words", new Words())));
    }

    /** As one types it. */
    private String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What one may type. */
    static final class Words extends ArrayList<String> {

        private static final long serialVersionUID = 1L;

        Words() {
            super(Arrays.stream(SitesChoice.values()).map(SitesChoice::word).toList());
        }
    }
}
