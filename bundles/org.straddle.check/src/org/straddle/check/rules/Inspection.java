package org.straddle.check.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

import org.straddle.grid.Square;
import org.straddle.kit.PackingList;
import org.straddle.kit.team.Resilience;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Bans;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.PolicyFigures;
import org.straddle.outlook.itinerary.Duty;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;
import org.straddle.outlook.keeping.KnownDays;
import org.straddle.outlook.keeping.PlanKeeping;
import org.straddle.sky.Window;
import org.straddle.words.TimeText;
import org.straddle.worth.EventWorth;
import org.straddle.worth.KnownChances;
import org.straddle.worth.TurnChance;

/** One look of all rules at one outlook, with what several of them need worked out once. For one thread. */
public final class Inspection {

    private final Outlook outlook;
    private final Itinerary itinerary;
    private final TimeText times;
    private final Map<Team, PackingList> packing = new HashMap<>();
    private final Map<Team, Resilience> resilience = new HashMap<>();
    private final Map<Site, List<UsedSite>> uses = new HashMap<>();
    private final Map<Square, List<Work>> bySquare = new HashMap<>();
    private final Map<Team, List<Duty>> duties = new HashMap<>();
    private final Map<Team, PlanKeeping> keeping = new HashMap<>();
    private final KnownDays knownDays;
    private final HoldFigures hold;
    private SortedMap<Square, List<Site>> claims;
    private Bans bans;
    private EventWorth worth;
    private final Map<Square, List<TurnChance>> chances = new HashMap<>();
    private final Readings readings;
    private final KnownChances knownChances;

    private Inspection(Outlook outlook, Inspection before) {
        this.outlook = outlook;
        this.itinerary = Itinerary.of(outlook.event());
        this.times = TimeText.of(outlook.zone());
        this.hold = HoldFigures.of(outlook.event().getPolicies());
        this.readings = new Readings(this, before == null ? null : before.readings);
        this.knownDays = before == null ? new KnownDays() : before.knownDays;
        this.knownChances = before == null ? null : before.knownChances();
    }

    public static Inspection of(Outlook outlook) {
        return new Inspection(outlook, null);
    }

    /** One of a later copy of the event, which takes over what has not changed. */
    public Inspection after(Outlook later) {
        return new Inspection(later, this);
    }

    Readings readings() {
        return readings;
    }

    private KnownChances knownChances() {
        return worth == null ? knownChances : worth.known();
    }

    public Outlook outlook() {
        return outlook;
    }

    public Event event() {
        return outlook.event();
    }

    public PolicyFigures policies() {
        return outlook.policies();
    }

    /** The policies about a plan that holds. */
    public HoldFigures hold() {
        return hold;
    }

    /** When a team is out, by time. */
    public List<Duty> duties(Team team) {
        return duties.computeIfAbsent(team, any -> Duty.of(any, outlook, itinerary.of(any), hold).stream()
                .sorted(Comparator.comparing(Duty::window, Window.IN_TIME_ORDER)).toList());
    }

    /** How likely the turns of a team happen as published. */
    public PlanKeeping keeping(Team team) {
        return keeping.computeIfAbsent(team, any -> PlanKeeping.of(any, outlook, itinerary.of(any), knownDays));
    }

    /** How likely the turns of a team would happen with other stays. @param stays its own, by time */
    public Map<Turn, Double> chances(Team team, List<Stay> stays) {
        return PlanKeeping.chances(team, outlook, stays, knownDays);
    }

    /** What turns of the event are worth. */
    public EventWorth worth() {
        if (worth == null) {
            worth = EventWorth.after(knownChances, outlook);
        }
        return worth;
    }

    /** A turn as chasers may profit from it. */
    public TurnChance chance(Work work) {
        return worth().chance(work.site(), work.bird(), work.window());
    }

    /** The turns from a square that begin before a turn, as chasers may profit from them. */
    public List<TurnChance> earlier(Square square, Work work) {
        int before = 0;
        for (Work other : turnsFrom(square)) {
            if (Itinerary.TURNS_BY_TIME.compare(other, work) >= 0) {
                break;
            }
            before++;
        }
        return chances.computeIfAbsent(square, any -> turnsFrom(any).stream().map(this::chance).toList()).subList(0, before);
    }

    public Itinerary itinerary() {
        return itinerary;
    }

    /** In the zone of the event. */
    public TimeText times() {
        return times;
    }

    /** What a team's kit says to its plan. */
    public Resilience resilience(Team team) {
        return resilience.computeIfAbsent(team, any -> Resilience.of(any, itinerary));
    }

    public PackingList packing(Team team) {
        return packing.computeIfAbsent(team, PackingList::of);
    }

    /** The stays at a site with what was known of it on their days. */
    public List<UsedSite> uses(Site site) {
        return uses.computeIfAbsent(site, any -> itinerary.at(site).stream().map(stay -> UsedSite.of(stay, this)).toList());
    }

    public Bans bans() {
        if (bans == null) {
            bans = Bans.of(event());
        }
        return bans;
    }

    /** The turns from sites that claim a square, by time. */
    public List<Work> turnsFrom(Square square) {
        return bySquare.computeIfAbsent(square, any -> claims().get(any).stream()
                .flatMap(site -> itinerary.at(site).stream()).flatMap(stay -> stay.turns().stream())
                .sorted(Itinerary.TURNS_BY_TIME).toList());
    }

    /** Which sites claim which square. */
    public SortedMap<Square, List<Site>> claims() {
        if (claims == null) {
            claims = new TreeMap<>();
            event().getSites().forEach(site -> outlook.squares(site)
                    .forEach(square -> claims.computeIfAbsent(square, any -> new ArrayList<>()).add(site)));
        }
        return claims;
    }
}
