package org.straddle.check.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

import org.eclipse.emf.ecore.EObject;
import org.straddle.grid.Square;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;

/**
 * What a rule looks at, one subject after another, and what it may read to judge a subject: the subject with all that
 * it contains, the things named here, and what holds for the whole event (its policies, days and zone). As long as none
 * of that has changed, what was found about the subject stays, and no rule of the scope looks at it again.
 *
 * <p>The lists are generous: looking once too often costs little, and a missing entry would leave a finding standing
 * that is no longer true.
 *
 * @param <T> the kind of subject
 */
public final class Scope<T> {

    /** A team: its people and kits, its bases, its stops with their sites and birds, who may sign, and the forecasts. */
    public static final Scope<Team> TEAM = new Scope<>("team", in -> in.event().getTeams(), Identified::getId, (team, in, read) -> {
        read.add(in.readings().of(team));
        in.readings().people(read);
        read.add(in.readings().of("bases", in.event().getBases()));
        read.add(in.readings().of("drives", in.event().getEnteredDrives()));
        read.add(in.readings().of("jurisdictions", in.event().getJurisdictions()));
        read.add(in.readings().of("forecasts", in.event().getForecasts()));
        read.add(in.readings().of("contacts", in.event().getContacts()));
        in.itinerary().of(team).forEach(stay -> in.readings().stay(stay, read));
    });

    /** A site: the stops there, their teams with their kits, the teams of its reviews, who may sign, and the forecasts. */
    public static final Scope<Site> SITE = new Scope<>("site", in -> in.event().getSites(), Identified::getId, (site, in, read) -> {
        read.add(in.readings().of(site));
        read.add(in.readings().of("forecasts", in.event().getForecasts()));
        read.add(in.readings().of("operators", in.event().getOperators()));
        read.add(in.readings().of("contacts", in.event().getContacts()));
        in.readings().stopsAt(site, read);
        Set<EObject> teamsAndKits = new LinkedHashSet<>();
        site.getReviews().forEach(review -> teamsAndKits.add(review.getTeam()));
        teamsAndKits.remove(null);
        in.itinerary().at(site).forEach(stay -> teamsAndKits.addAll(stay.team().getKits()));
        teamsAndKits.forEach(thing -> read.add(in.readings().of(thing)));
        in.itinerary().at(site).forEach(stay -> in.readings().stay(stay, read));
    });

    /** A bird: the stops with turns on it, their teams and sites. */
    public static final Scope<Bird> BIRD = new Scope<>("bird", in -> in.event().getBirds(), Identified::getId, (bird, in, read) -> {
        read.add(in.readings().of(bird));
        for (Work work : in.itinerary().on(bird)) {
            read.add(in.readings().of(work.stop()));
            read.add(in.readings().of(work.team()));
            read.add(in.readings().of(work.site()));
        }
    });

    /** A stop, complete or not: its team with its people, its site, the birds of its turns, and all bans. */
    public static final Scope<Stop> STOP = new Scope<>("stop", in -> Itinerary.stops(in.event()).toList(), Identified::getId,
            (stop, in, read) -> read.add(in.readings().stop(stop)));

    /** The same for complete stops only. */
    public static final Scope<Stay> STAY = new Scope<>("stay", in -> in.itinerary().stays(), stay -> stay.stop().getId(),
            (stay, in, read) -> read.add(in.readings().stop(stay.stop())));

    /**
     * A square: how many need it and where they live, the sites that claim it, and all stops that compete for their squares,
     * with how many need those and who may sign their reviews.
     */
    public static final Scope<Square> SQUARE = new Scope<>("square", in -> in.claims().keySet(), Square::name, (square, in, read) -> {
        in.readings().chasers(read);
        in.readings().reviewers(read);
        Set<Square> near = new LinkedHashSet<>();
        in.claims().get(square).forEach(site -> near.addAll(in.outlook().squares(site)));
        Set<Site> sites = new LinkedHashSet<>();
        near.forEach(each -> sites.addAll(in.claims().get(each)));
        sites.forEach(site -> read.add(in.readings().competing(site)));
    });

    /** All teams together, with their people and kits. */
    public static final Scope<Event> TEAMS = whole("teams", (event, in, read) -> {
        read.add(in.readings().of("teams", event.getTeams()));
        in.readings().people(read);
    });

    /** All birds together. */
    public static final Scope<Event> BIRDS = whole("birds", (event, in, read) -> read.add(in.readings().of("birds", event.getBirds())));

    /** All stops together. */
    public static final Scope<Event> STOPS = whole("stops",
            (event, in, read) -> Itinerary.stops(event).forEach(stop -> read.add(in.readings().of(stop))));

    /** All stops together, with all sites and birds. */
    public static final Scope<Event> TURNS = whole("turns", (event, in, read) -> {
        Itinerary.stops(event).forEach(stop -> read.add(in.readings().of(stop)));
        read.add(in.readings().of("sites", event.getSites()));
        read.add(in.readings().of("birds", event.getBirds()));
    });

    /** Adds the versions of what the rules read of a subject. */
    private interface Reads<T> {

        void add(T subject, Inspection in, List<Object> read);
    }

    private final String name;
    private final Function<Inspection, Collection<T>> subjects;
    private final Function<T, String> key;
    private final Reads<T> reads;

    private Scope(String name, Function<Inspection, Collection<T>> subjects, Function<T, String> key, Reads<T> reads) {
        this.name = name;
        this.subjects = subjects;
        this.key = key;
        this.reads = reads;
    }

    private static Scope<Event> whole(String name, Reads<Event> reads) {
        return new Scope<>(name, in -> List.of(in.event()), Identified::getId, reads);
    }

    public Collection<T> subjects(Inspection in) {
        return subjects.apply(in);
    }

    /** The same for the same subject in a later copy of the event, and for no other. */
    public String key(T subject) {
        return name + " " + key.apply(subject);
    }

    /** What the rules of this scope read: equal to that of another check while nothing of it has changed. */
    public List<Object> reading(T subject, Inspection in) {
        List<Object> read = new ArrayList<>();
        reads.add(subject, in, read);
        return read;
    }
}
