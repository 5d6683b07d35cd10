package org.straddle.check.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Versions;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;

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
    private final Map<Site, List<Object>> competing = new IdentityHashMap<>();
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
        return together(name, read -> things.forEach(thing -> read.add(of(thing))));
    }

    /** Operators and kits. */
    void people(List<Object> read) {
        read.add(of("operators", in.event().getOperators()));
        read.add(of("kits", in.event().getKits()));
    }

    /** Who may sign reviews, and what else a review may rest on besides its site and the stops there. */
    void reviewers(List<Object> read) {
        people(read);
        Event event = in.event();
        read.add(of("teams", event.getTeams()));
        read.add(of("contacts", event.getContacts()));
        read.add(of("forecasts", event.getForecasts()));
    }

    /** Who needs what does not stand here but with the sites, because one demand says nothing of far squares. */
    void chasers(List<Object> read) {
        read.add(of("regions", in.event().getRegions()));
        read.add(of("chasers", in.event().getChaserList()));
    }

    /** A stop with its team, site and birds, complete or not, all people, jurisdictions and bans. */
    List<Object> stop(Stop stop) {
        return stops.computeIfAbsent(stop, any -> together("stop:" + stop.getId(), read -> {
            people(read);
            read.add(of("jurisdictions", in.event().getJurisdictions()));
            read.add(of("bans", in.event().getPlan().getBans()));
            read.add(of(stop));
            ifSet(stop.getTeam(), read);
            ifSet(stop.getSite(), read);
            stop.getTurns().forEach(turn -> ifSet(turn.getBird(), read));
        }));
    }

    /** A stop with its team, site and the birds of its complete turns. */
    void stay(Stay stay, List<Object> read) {
        read.add(of(stay.stop()));
        read.add(of(stay.team()));
        read.add(of(stay.site()));
        stay.turns().forEach(work -> read.add(of(work.bird())));
    }

    /** The stops at a site, complete or not, with their teams. */
    void stopsAt(Site site, List<Object> read) {
        if (bySite == null) {
            bySite = Itinerary.stops(in.event()).filter(stop -> stop.getSite() != null)
                    .collect(Collectors.groupingBy(Stop::getSite, IdentityHashMap::new, Collectors.toList()));
        }
        for (Stop stop : bySite.getOrDefault(site, List.of())) {
            read.add(of(stop));
            ifSet(stop.getTeam(), read);
        }
    }

    private void ifSet(EObject thing, List<Object> read) {
        if (thing != null) {
            read.add(of(thing));
        }
    }

    /** A site, the stops there, and how many chasers need its squares. */
    List<Object> competing(Site site) {
        return competing.computeIfAbsent(site, any -> together("site:" + site.getId(), read -> {
            read.add(of(site));
            stopsAt(site, read);
            in.itinerary().at(site).forEach(stay -> stay(stay, read));
            in.outlook().squares(site).forEach(square -> read.add(in.outlook().demand(square)));
        }));
    }

    private List<Object> together(String name, Consumer<List<Object>> versions) {
        List<Object> known = together.get(name);
        if (known == null) {
            List<Object> now = new ArrayList<>();
            versions.accept(now);
            List<Object> before = earlier.get(name);
            known = now.equals(before) ? before : Collections.unmodifiableList(now);
            together.put(name, known);
        }
        return known;
    }
}
