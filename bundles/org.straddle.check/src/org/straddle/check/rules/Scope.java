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
import org.straddle.model.Turn;
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

    /** A team: its people and kits, its bases, its stops with their sites and birds, and the forecasts. */
    public static final Scope<Team> TEAM = new Scope<>("team", in -> in.event().getTeams(), Identified::getId,
            (team, in) -> concat(Stream.of(team), people(in), in.event().getBases().stream(),
                    in.event().getEnteredDrives().stream(), in.event().getJurisdictions().stream(), in.event().getForecasts().stream(),
                    in.itinerary().of(team).stream().flatMap(Scope::around)));

    /** A site: the stops there, their teams with their kits, the teams of its reviews, who may sign, and the forecasts. */
    public static final Scope<Site> SITE = new Scope<>("site", in -> in.event().getSites(), Identified::getId,
            (site, in) -> concat(Stream.of(site), in.event().getForecasts().stream(), in.event().getOperators().stream(),
                    in.event().getContacts().stream(), site.getReviews().stream().map(Review::getTeam).filter(Objects::nonNull).distinct(),
                    Itinerary.stops(in.event()).filter(stop -> stop.getSite() == site).flatMap(stop -> Stream.of(stop, stop.getTeam()))
                            .filter(Objects::nonNull), in.itinerary().at(site).stream()
                    .flatMap(stay -> stay.team().getKits().stream()).distinct(), in.itinerary().at(site).stream().flatMap(Scope::around)));

    /** A bird: the stops with turns on it, their teams and sites. */
    public static final Scope<Bird> BIRD = new Scope<>("bird", in -> in.event().getBirds(), Identified::getId,
            (bird, in) -> Stream.concat(Stream.of(bird), in.itinerary().on(bird).stream()
                    .flatMap(work -> Stream.of(work.stop(), work.team(), work.site()))));

    /** A stop, complete or not: its team with its people, its site, the birds of its turns, and all bans. */
    public static final Scope<Stop> STOP = new Scope<>("stop", in -> Itinerary.stops(in.event()).toList(), Identified::getId,
            (stop, in) -> around(stop, in));

    /** The same for complete stops only. */
    public static final Scope<Stay> STAY = new Scope<>("stay", in -> in.itinerary().stays(), stay -> stay.stop().getId(),
            (stay, in) -> around(stay.stop(), in));

    /** A square: who needs it and where they live, the sites that claim it, and all stops that compete for their squares. */
    public static final Scope<Square> SQUARE = new Scope<>("square", in -> in.claims().keySet(), Square::name,
            (square, in) -> Stream.concat(chasers(in), in.claims().get(square).stream()
                    .flatMap(site -> in.outlook().squares(site).stream()).distinct()
                    .flatMap(near -> in.claims().get(near).stream()).distinct()
                    .flatMap(site -> Stream.concat(Stream.of(site),
                            in.itinerary().at(site).stream().flatMap(Scope::around)))));

    /** All teams together, with their people and kits. */
    public static final Scope<Event> TEAMS = whole("teams",
            in -> Stream.concat(in.event().getTeams().stream(), people(in)));

    /** All birds together. */
    public static final Scope<Event> BIRDS = whole("birds", in -> in.event().getBirds().stream());

    /** All stops together. */
    public static final Scope<Event> STOPS = whole("stops", in -> Itinerary.stops(in.event()));

    private final String name;
    private final Function<Inspection, Collection<T>> subjects;
    private final Function<T, String> key;
    private final BiFunction<T, Inspection, Stream<? extends EObject>> reads;

    private Scope(String name, Function<Inspection, Collection<T>> subjects, Function<T, String> key,
            BiFunction<T, Inspection, Stream<? extends EObject>> reads) {
        this.name = name;
        this.subjects = subjects;
        this.key = key;
        this.reads = reads;
    }

    private static Scope<Event> whole(String name, Function<Inspection, Stream<? extends EObject>> reads) {
        return new Scope<>(name, in -> List.of(in.event()), Identified::getId, (event, in) -> reads.apply(in));
    }

    public Collection<T> subjects(Inspection in) {
        return subjects.apply(in);
    }

    /** The same for the same subject in a later copy of the event, and for no other. */
    public String key(T subject) {
        return name + " " + key.apply(subject);
    }

    /** Things of the event that rules of this scope read; some may be named twice. */
    public Stream<? extends EObject> reads(T subject, Inspection in) {
        return reads.apply(subject, in);
    }

    private static Stream<EObject> chasers(Inspection in) {
        return concat(in.event().getDemands().stream(), in.event().getRegions().stream(), in.event().getChaserList().stream());
    }

    private static Stream<EObject> people(Inspection in) {
        return concat(in.event().getOperators().stream(), in.event().getKits().stream());
    }

    private static Stream<EObject> around(Stay stay) {
        return concat(Stream.of(stay.stop(), stay.team(), stay.site()), stay.turns().stream().map(Work::bird));
    }

    private static Stream<EObject> around(Stop stop, Inspection in) {
        return concat(Stream.of(stop), Stream.ofNullable(stop.getTeam()), Stream.ofNullable(stop.getSite()),
                stop.getTurns().stream().map(Turn::getBird).filter(bird -> bird != null), people(in),
                in.event().getJurisdictions().stream(),
                in.event().getPlan().getBans().stream());
    }

    @SafeVarargs
    private static Stream<EObject> concat(Stream<? extends EObject>... parts) {
        return Stream.of(parts).flatMap(part -> part);
    }
}
