package org.straddle.check.rules;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.model.Versions;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;

/**
 * What rules read, as versions. Things that are read together make one entry, which is the same object as in the check before
 * while all of its versions are: so that readings of hundreds of subjects are compared quickly.
 */
final class Readings {

    private final Inspection in;
    private final Versions versions;
    /** Those of the check before. */
    private final Map<String, List<Object>> earlier;
    private final Map<String, List<Object>> together = new HashMap<>();
    private final Map<Stop, List<Object>> stops = new IdentityHashMap<>();
    private Map<Site, List<Stop>> bySite;

    /** @param earlier those of the check before, or null */
    Readings(Inspection in, Readings earlier) {
        this.in = in;
        this.versions = in.outlook().versions();
        this.earlier = earlier == null ? Map.of() : earlier.together;
    }

    Object of(EObject thing) {
        return versions.of(thing);
    }

    /** Things that are always read together. @param name of no others */
    List<Object> of(String name, List<? extends EObject> things) {
        return together(name, () -> things.stream().map(this::of));
    }

    /** Operators and kits. */
    Stream<Object> people() {
        return Stream.of(of("operators", in.event().getOperators()), of("kits", in.event().getKits()));
    }

    /** Who may sign reviews, and what else a review may rest on besides its site and the stops there. */
    Stream<Object> reviewers() {
        Event event = in.event();
        return Stream.of(of("operators", event.getOperators()), of("kits", event.getKits()), of("teams", event.getTeams()),
                of("contacts", event.getContacts()), of("forecasts", event.getForecasts()));
    }

    /** Who needs what does not stand here but with the sites, because one demand says nothing of far squares. */
    Stream<Object> chasers() {
        Event event = in.event();
        return Stream.of(of("regions", event.getRegions()), of("chasers", event.getChaserList()));
    }

    /** A stop with its team, site and birds, complete or not, all people, jurisdictions and bans. */
    List<Object> stop(Stop stop) {
        return stops.computeIfAbsent(stop, any -> together("stop:" + stop.getId(), () -> Stream.of(people(), Stream.of(
                of("jurisdictions", in.event().getJurisdictions()), of("bans", in.event().getPlan().getBans())),
                Stream.concat(Stream.<EObject>of(stop, stop.getTeam(), stop.getSite()), stop.getTurns().stream().map(Turn::getBird))
                        .filter(Objects::nonNull).map(this::of)).flatMap(part -> part)));
    }

    /** A stop with its team, site and the birds of its complete turns. */
    Stream<Object> stay(Stay stay) {
        return Stream.concat(Stream.<EObject>of(stay.stop(), stay.team(), stay.site()), stay.turns().stream().map(Work::bird))
                .map(this::of);
    }

    /** The stops at a site, complete or not, with their teams. */
    Stream<Object> stopsAt(Site site) {
        if (bySite == null) {
            bySite = Itinerary.stops(in.event()).filter(stop -> stop.getSite() != null)
                    .collect(Collectors.groupingBy(Stop::getSite, IdentityHashMap::new, Collectors.toList()));
        }
        return bySite.getOrDefault(site, List.of()).stream().flatMap(stop -> Stream.<EObject>of(stop, stop.getTeam()))
                .filter(Objects::nonNull).map(this::of);
    }

    /** A site, the stops there, and how many chasers need its squares. */
    List<Object> competing(Site site) {
        return together("site:" + site.getId(), () -> Stream.of(Stream.of(of(site)), stopsAt(site),
                in.itinerary().at(site).stream().flatMap(this::stay), in.outlook().squares(site).stream().map(in.outlook()::demand))
                .flatMap(part -> part));
    }

    private List<Object> together(String name, Supplier<Stream<Object>> versionsOf) {
        List<Object> known = together.get(name);
        if (known == null) {
            List<Object> now = versionsOf.get().toList();
            List<Object> before = earlier.get(name);
            known = now.equals(before) ? before : now;
            together.put(name, known);
        }
        return known;
    }
}
