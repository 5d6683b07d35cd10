package org.straddle.ui.map;

import java.util.List;
import java.util.stream.Stream;

import org.straddle.atlas.scene.Attention;
import org.straddle.atlas.scene.Look;
import org.straddle.check.FindingsByThing;
import org.straddle.check.Severity;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.ui.session.Computed;

/** What the map shows of things beyond where they are: marks of teams as on every sheet, and findings at each place. */
final class Looks {

    private Looks() {
    }

    static Look of(Computed computed) {
        FindingsByThing findings = FindingsByThing.of(computed.findings());
        return new Look(site -> attention(findings, concerned(computed, site)));
    }

    /** The site with its visits and reviews, and the stops there with their turns. */
    static List<Identified> concerned(Computed computed, Site site) {
        Stream<Stop> stops = computed.snapshot().getPlan() == null ? Stream.empty()
                : computed.snapshot().getPlan().getStops().stream().filter(stop -> stop.getSite() == site);
        return Stream.of(Stream.of(site), site.getVisits().stream(), site.getReviews().stream(),
                stops.flatMap(stop -> Stream.concat(Stream.of(stop), stop.getTurns().stream())))
                .flatMap(things -> things).map(Identified.class::cast).toList();
    }

    private static Attention attention(FindingsByThing findings, List<Identified> things) {
        return findings.gravest(things).map(Looks::attention).orElse(Attention.NONE);
    }

    private static Attention attention(Severity severity) {
        return switch (severity) {
            case BLOCKER -> Attention.BLOCKER;
            case WARNING -> Attention.WARNING;
            case ADVICE -> Attention.ADVICE;
        };
    }
}
