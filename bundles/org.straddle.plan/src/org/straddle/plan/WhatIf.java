package org.straddle.plan;

import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;

import org.straddle.model.Ban;
import org.straddle.model.Bird;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;
import org.straddle.words.Sentence;

/**
 * Something that may happen, or has happened, and that the plan has to make room for. It is a ban that is not in the
 * plan yet: a planner plans as if it were, and it goes in with the proposal.
 */
public sealed interface WhatIf {

    Catalogue TEXTS = Catalogue.of(WhatIf.class);

    /** A new ban with this effect; it names the things of the event that this was made with. */
    Ban ban();

    /** What happens, for a list of such cases. */
    default String sentence() {
        return ban().getReason();
    }

    /** A team can do nothing, neither work nor drive. @param until empty for the rest of the event */
    record Breakdown(Team team, Optional<Instant> from, Optional<Instant> until) implements WhatIf {
        @Override
        public Ban ban() {
            Ban ban = WhatIf.ban(TEXTS.text("whatIf.stopped", "team", Sentence.begun(Naming.number(team))), from, until);
            ban.setTeam(team);
            return ban;
        }
    }

    /** Nobody can be at a site, because it is closed or the road to it is. */
    record ClosedSite(Site site, Optional<Instant> from, Optional<Instant> until) implements WhatIf {
        @Override
        public Ban ban() {
            Ban ban = WhatIf.ban(TEXTS.text("whatIf.closed", "site", Naming.name(site)), from, until);
            ban.setSite(site);
            return ban;
        }
    }

    /** A bird does not answer. */
    record DeadBird(Bird bird, Optional<Instant> from, Optional<Instant> until) implements WhatIf {
        @Override
        public Ban ban() {
            Ban ban = WhatIf.ban(TEXTS.text("whatIf.silent", "bird", Naming.name(bird)), from, until);
            ban.setBird(bird);
            return ban;
        }
    }

    /** A team starts its day later than planned: the day that the start lies in, or the last one before it. */
    record LateStart(Team team, Instant start) implements WhatIf {
        @Override
        public Ban ban() {
            Optional<Instant> planned = team.getDays().stream().map(TeamDay::getFrom)
                    .filter(from -> from != null && from.isBefore(start)).max(Comparator.naturalOrder());
            Ban ban = WhatIf.ban(TEXTS.text("whatIf.late", "team", Sentence.begun(Naming.number(team))), planned, Optional.of(start));
            ban.setTeam(team);
            return ban;
        }
    }

    private static Ban ban(String what, Optional<Instant> from, Optional<Instant> until) {
        Ban ban = Fresh.ban();
        from.ifPresent(ban::setFrom);
        until.ifPresent(ban::setUntil);
        ban.setReason(what);
        return ban;
    }
}
