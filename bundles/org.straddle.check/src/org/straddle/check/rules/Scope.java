package org.straddle.check.rules;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.straddle.grid.Square;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;

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
    public static final Scope<Team> TEAM = new Scope<>("team", in -> in.event().getTeams(), Identified::getId,
            (team, in) -> concat(Stream.of(in.readings().of(team)), in.readings().people(), Stream.of(
                    in.readings().of("bases", in.event().getBases()), in.readings().of("drives", in.event().getEnteredDrives()),
                    jurisdictions(in), forecasts(in), in.readings().of("contacts", in.event().getContacts())), in.itinerary().of(team).stream().flatMap(in.readings()::stay)));

    /** A site: the stops there, their teams with their kits, the teams of its reviews, who may sign, and the forecasts. */
    public static final Scope<Site> SITE = new Scope<>("site", in -> in.event().getSites(), Identified::getId,
            (site, in) -> concat(Stream.of(in.readings().of(site), forecasts(in),
                    in.readings().of("operators", in.event().getOperators()), in.readings().of("contacts", in.event().getContacts())),
                    in.readings().stopsAt(site), Stream.<EObject>concat(site.getReviews().stream().map(Review::getTeam).filter(Objects::nonNull),
                            in.itinerary().at(site).stream().flatMap(stay -> stay.team().getKits().stream()))
                            .distinct().map(in.readings()::of),
                    in.itinerary().at(site).stream().flatMap(in.readings()::stay)));

    /** A bird: the stops with turns on it, their teams and sites. */
    public static final Scope<Bird> BIRD = new Scope<>("bird", in -> in.event().getBirds(), Identified::getId,
            (bird, in) -> Stream.concat(Stream.<EObject>of(bird), in.itinerary().on(bird).stream()
                    .flatMap(work -> Stream.of(work.stop(), work.team(), work.site()))).map(in.readings()::of));

    /** A stop, complete or not: its team with its people, its site, the birds of its turns, and all bans. */
    public static final Scope<Stop> STOP = new Scope<>("stop", in -> Itinerary.stops(in.event()).toList(), Identified::getId,
            (stop, in) -> Stream.of(in.readings().stop(stop)));

    /** The same for complete stops only. */
    public static final Scope<Stay> STAY = new Scope<>("stay", in -> in.itinerary().stays(), stay -> stay.stop().getId(),
            (stay, in) -> Stream.of(in.readings().stop(stay.stop())));

    /**
     * A square: how many need it and where they live, the sites that claim it, and all stops that compete for their squares,
     * with how many need those and who may sign their reviews.
     */
    public static final Scope<Square> SQUARE = new Scope<>("square", in -> in.claims().keySet(), Square::name,
            (square, in) -> concat(in.readings().chasers(), in.readings().reviewers(), in.claims().get(square).stream()
                    .flatMap(site -> in.outlook().squares(site).stream()).distinct()
                    .flatMap(near -> in.claims().get(near).stream()).distinct().map(in.readings()::competing)));

    /** All teams together, with their people and kits. */
    public static final Scope<Event> TEAMS = whole("teams", in -> Stream.concat(
            Stream.of(in.readings().of("teams", in.event().getTeams())), in.readings().people()));

    /** All birds together. */
    public static final Scope<Event> BIRDS = whole("birds", in -> Stream.of(in.readings().of("birds", in.event().getBirds())));

    /** All stops together. */
    public static final Scope<Event> STOPS = whole("stops",
            in -> Itinerary.stops(in.event()).map(in.readings()::of));

    private final String name;
    private final Function<Inspection, Collection<T>> subjects;
    private final Function<T, String> key;
    private final BiFunction<T, Inspection, Stream<Object>> reads;

    private Scope(String name, Function<Inspection, Collection<T>> subjects, Function<T, String> key,
            BiFunction<T, Inspection, Stream<Object>> reads) {
        this.name = name;
        this.subjects = subjects;
        this.key = key;
        this.reads = reads;
    }

    private static Scope<Event> whole(String name, Function<Inspection, Stream<Object>> reads) {
        return new Scope<>(name, in -> List.of(in.event()), Identified::getId, (event, in) -> reads.apply(in));
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
        return reads.apply(subject, in).toList();
    }

    private static Object jurisdictions(Inspection in) {
        return in.readings().of("jurisdictions", in.event().getJurisdictions());
    }

    private static Object forecasts(Inspection in) {
        return in.readings().of("forecasts", in.event().getForecasts());
    }

    @SafeVarargs
    private static Stream<Object> concat(Stream<Object>... parts) {
        return Stream.of(parts).flatMap(part -> part);
    }
}
