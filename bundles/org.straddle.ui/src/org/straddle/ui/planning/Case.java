package org.straddle.ui.planning;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.plan.Banning;
import org.straddle.plan.WhatIf;
import org.straddle.ui.things.ThingText;

/**
 * Something that may happen, as the user put it: the thing is known by its id, so that the case fits every copy of the
 * event.
 *
 * @param until for a late start empty
 */
record Case(Kind kind, String id, Optional<Instant> from, Optional<Instant> until) {

    /** What may happen to which kind of thing. */
    enum Kind {
        TEAM_OUT("A team is out") {
            @Override
            List<? extends Identified> things(Event event) {
                return event.getTeams();
            }

            @Override
            WhatIf of(Identified thing, Case happening) {
                return new WhatIf.Breakdown((Team) thing, happening.from, happening.until);
            }
        },
        SITE_CLOSED("A site or its road is closed") {
            @Override
            List<? extends Identified> things(Event event) {
                return event.getSites();
            }

            @Override
            WhatIf of(Identified thing, Case happening) {
                return new WhatIf.ClosedSite((Site) thing, happening.from, happening.until);
            }
        },
        BIRD_SILENT("A bird is silent") {
            @Override
            List<? extends Identified> things(Event event) {
                return event.getBirds();
            }

            @Override
            WhatIf of(Identified thing, Case happening) {
                return new WhatIf.DeadBird((Bird) thing, happening.from, happening.until);
            }
        },
        TEAM_LATE("A team starts late") {
            @Override
            List<? extends Identified> things(Event event) {
                return event.getTeams();
            }

            @Override
            WhatIf of(Identified thing, Case happening) {
                return new WhatIf.LateStart((Team) thing, happening.from.orElseThrow());
            }
        };

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }

        abstract List<? extends Identified> things(Event event);

        abstract WhatIf of(Identified thing, Case happening);
    }

    /** Empty when the thing is gone. */
    Optional<WhatIf> in(Event event) {
        return kind.things(event).stream().filter(thing -> thing.getId().equals(id)).findFirst()
                .map(thing -> kind.of(thing, this));
    }

    String words(Event event) {
        return in(event).map(whatIf -> Banning.words(whatIf.ban())).orElse("something that is gone");
    }

    static String name(Identified thing) {
        return ThingText.of(thing);
    }
}
