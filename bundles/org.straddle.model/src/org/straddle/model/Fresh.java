package org.straddle.model;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;

import org.eclipse.emf.ecore.EClass;

/**
 * Makes model objects that carry their identity from the start, because references between files need it before
 * the first save; and with what they never go without, where that is more than a name.
 */
public final class Fresh {

    private Fresh() {
    }

    public static Event event(String name) {
        Event event = identified(StraddleFactory.eINSTANCE.createEvent());
        event.setName(name);
        event.setPolicies(StraddleFactory.eINSTANCE.createPolicies());
        event.setPlan(plan());
        return event;
    }

    /** The same with its zone and its days, the last one included. */
    public static Event event(String name, String zone, LocalDate firstDay, LocalDate lastDay) {
        Event event = event(name);
        event.setZone(zone);
        event.setFirstDay(firstDay);
        event.setLastDay(lastDay);
        return event;
    }

    public static Region region() {
        return identified(StraddleFactory.eINSTANCE.createRegion());
    }

    public static Jurisdiction jurisdiction() {
        return identified(StraddleFactory.eINSTANCE.createJurisdiction());
    }

    public static Layer layer() {
        return identified(StraddleFactory.eINSTANCE.createLayer());
    }

    public static Base base() {
        return identified(StraddleFactory.eINSTANCE.createBase());
    }

    public static Operator operator() {
        return identified(StraddleFactory.eINSTANCE.createOperator());
    }

    public static Team team() {
        return identified(StraddleFactory.eINSTANCE.createTeam());
    }

    public static Kit kit() {
        return identified(StraddleFactory.eINSTANCE.createKit());
    }

    public static KitItem kitItem() {
        return identified(StraddleFactory.eINSTANCE.createKitItem());
    }

    public static KitItem kitItem(String name, Role role) {
        KitItem item = kitItem();
        item.setName(name);
        item.setRole(role);
        return item;
    }

    public static DryRun dryRun() {
        return identified(StraddleFactory.eINSTANCE.createDryRun());
    }

    public static Site site() {
        return identified(StraddleFactory.eINSTANCE.createSite());
    }

    public static Visit visit() {
        return identified(StraddleFactory.eINSTANCE.createVisit());
    }

    public static Review review() {
        return identified(StraddleFactory.eINSTANCE.createReview());
    }

    public static Bird bird() {
        return identified(StraddleFactory.eINSTANCE.createBird());
    }

    /** Frequencies of an uplink or a downlink, MHz; the same twice for one channel. */
    public static Link link(double lowMhz, double highMhz) {
        Link link = StraddleFactory.eINSTANCE.createLink();
        link.setLowMhz(lowMhz);
        link.setHighMhz(highMhz);
        return link;
    }

    public static Plan plan() {
        return identified(StraddleFactory.eINSTANCE.createPlan());
    }

    public static Stop stop() {
        return identified(StraddleFactory.eINSTANCE.createStop());
    }

    /** A stop of a team at a site, of no plan yet, without turns. */
    public static Stop stop(Team team, Site site, Instant arrival, Instant departure) {
        Stop stop = stop();
        stop.setTeam(team);
        stop.setSite(site);
        stop.setArrival(arrival);
        stop.setDeparture(departure);
        return stop;
    }

    public static Turn turn() {
        return identified(StraddleFactory.eINSTANCE.createTurn());
    }

    /** A turn on a bird, of no stop yet. */
    public static Turn turn(Bird bird, Instant start, Instant end) {
        Turn turn = turn();
        turn.setBird(bird);
        turn.setStart(start);
        turn.setEnd(end);
        return turn;
    }

    /** A day on the road, of no team yet; days have no identity of their own. */
    public static TeamDay teamDay(Instant from, Instant until) {
        TeamDay day = StraddleFactory.eINSTANCE.createTeamDay();
        day.setFrom(from);
        day.setUntil(until);
        return day;
    }

    /** The same from a base to a base, either of which may be null. */
    public static TeamDay teamDay(Instant from, Instant until, Base start, Base end) {
        TeamDay day = teamDay(from, until);
        day.setStart(start);
        day.setEnd(end);
        return day;
    }

    public static Ban ban() {
        return identified(StraddleFactory.eINSTANCE.createBan());
    }

    public static Acceptance acceptance() {
        return identified(StraddleFactory.eINSTANCE.createAcceptance());
    }

    /** Any concrete kind of identified object, for code that knows only the kind. */
    public static Identified of(EClass kind) {
        return identified((Identified) StraddleFactory.eINSTANCE.create(Objects.requireNonNull(kind)));
    }

    private static <T extends Identified> T identified(T object) {
        object.setId(UUID.randomUUID().toString());
        return object;
    }
}
