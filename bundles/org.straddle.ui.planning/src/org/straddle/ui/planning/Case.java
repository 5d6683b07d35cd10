package org.straddle.ui.planning;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.plan.Banning;
import org.straddle.plan.WhatIf;
import org.straddle.words.Catalogue;

/**
 * Something that may happen, as the user put it: the thing is known by its id, so that the case fits every copy of the
 * event.
 *
 * @param until for a late start empty
 */
record Case(Kind kind, String id, Optional<Instant> from, Optional<Instant> until) {

    private static final Catalogue TEXTS = Catalogue.of(Case.class);

    /** What may happen to which kind of thing. */
    enum Kind {

        TEAM_OUT(Event::getTeams,
                (team, happening) -> new WhatIf.Breakdown((Team) team, happening.from, happening.until)),
        SITE_CLOSED(Event::getSites,
                (site, happening) -> new WhatIf.ClosedSite((Site) site, happening.from, happening.until)),
        BIRD_SILENT(Event::getBirds,
                (bird, happening) -> new WhatIf.DeadBird((Bird) bird, happening.from, happening.until)),
        TEAM_LATE(Event::getTeams,
                (team, happening) -> new WhatIf.LateStart((Team) team, happening.from.orElseThrow()));

        private final Function<Event, List<? extends Identified>> things;
        private final BiFunction<Identified, Case, WhatIf> whatIf;

        Kind(Function<Event, List<? extends Identified>> things, BiFunction<Identified, Case, WhatIf> whatIf) {
            this.things = things;
            this.whatIf = whatIf;
        }

        String words() {
            return TEXTS.text("kind." + name());
        }

        List<? extends Identified> things(Event event) {
            return things.apply(event);
        }

        WhatIf of(Identified thing, Case happening) {
            return whatIf.apply(thing, happening);
        }
    }

    /** Empty when the thing is gone. */
    Optional<WhatIf> in(Event event) {
        return kind.things(event).stream().filter(thing -> thing.getId().equals(id)).findFirst()
                .map(thing -> kind.of(thing, this));
    }

    String words(Event event) {
        return in(event).map(whatIf -> Banning.words(whatIf.ban())).orElse(TEXTS.text("case.gone"));
    }

    static String name(Identified thing) {
        return Naming.name(thing);
    }
}
