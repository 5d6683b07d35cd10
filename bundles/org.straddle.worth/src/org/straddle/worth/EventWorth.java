package org.straddle.worth;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

import org.straddle.grid.Square;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Region;
import org.straddle.model.Site;
import org.straddle.model.Turn;
import org.straddle.outlook.Demands;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.Reach;
import org.straddle.outlook.SitePass;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Work;
import org.straddle.sky.Viewpoint;
import org.straddle.sky.Window;

/**
 * What turns of an event are worth. The groups of chasers are those of its list, by the square they live in, else its regions, each with its share of all chasers and with the
 * event's demand; an event without regions has one group that is taken to live where the stations are.
 *
 * <p>Safe for use by many threads.
 */
public final class EventWorth {

    private final Outlook outlook;
    private final WorthFigures figures;
    private final List<ChaserGroup> groups;
    /** Null until somebody asks: many ask for turns only. */
    private volatile SortedSet<Square> wanted;
    private final KnownChances known;
    private final Map<Site, Map<LocalDate, SiteReadiness>> readiness = new ConcurrentHashMap<>();

    /** @param before of an earlier copy of the event with groups made in the same way, or null */
    private EventWorth(Outlook outlook, List<ChaserGroup> groups, KnownChances before) {
        this.outlook = outlook;
        this.groups = groups;
        figures = WorthFigures.of(outlook.event().getPolicies());
        known = KnownChances.after(before, outlook, groups, figures);
    }

    public static EventWorth of(Outlook outlook) {
        return after(null, outlook);
    }

    /**
     * Of a later copy of an event: what turns are worth is taken over while nothing that it rests on has changed.
     *
     * @param before what was {@link #known} of an earlier copy, whose outlook this one was made after; null if nothing
     */
    public static EventWorth after(KnownChances before, Outlook outlook) {
        return new EventWorth(outlook, groups(outlook), before);
    }

    /** What to hand on to a later copy of the event; it keeps nothing of this one alive. */
    public KnownChances known() {
        return known;
    }

    /** With other chasers than the event's regions and demand tell of, such as those of a list. */
    public static EventWorth of(Outlook outlook, List<ChaserGroup> groups) {
        return new EventWorth(outlook, List.copyOf(groups), null);
    }

    private static List<ChaserGroup> groups(Outlook outlook) {
        List<ChaserGroup> listed = ChaserGroups.of(outlook.event());
        if (!listed.isEmpty()) {
            return listed;
        }
        WorthFigures figures = WorthFigures.of(outlook.event().getPolicies());
        Demands demands = Demands.of(outlook.event());
        List<Region> regions = outlook.reach().regions().stream().filter(region -> Reach.share(region) > 0).toList();
        if (regions.isEmpty()) {
            return List.of(new ChaserGroup(Optional.empty(), "", Optional.empty(),
                    new Needs.ByDemand(figures.chasers(), demands)));
        }
        double shares = Math.max(1, regions.stream().mapToDouble(Reach::share).sum());
        return regions.stream().map(region -> new ChaserGroup(Optional.of(region),
                region.getName() == null ? "" : region.getName(), Optional.of(outlook.reach().area(region)),
                new Needs.ByDemand(figures.chasers() * Reach.share(region) / shares, demands))).toList();
    }

    /** Squares that sites claim or that somebody needs: a demand of the event, or a chaser. */
    public SortedSet<Square> wanted() {
        SortedSet<Square> known = wanted;
        if (known == null) {
            known = Collections.unmodifiableSortedSet(readWanted());
            wanted = known;
        }
        return known;
    }

    private SortedSet<Square> readWanted() {
        Event event = outlook.event();
        SortedSet<Square> all = new TreeSet<>();
        event.getSites().forEach(site -> all.addAll(outlook.squares(site)));
        event.getDemands().forEach(demand -> Square.named(demand.getSquare()).ifPresent(all::add));
        event.getChaserList().forEach(chaser -> chaser.getSquares().forEach(square -> Square.named(square).ifPresent(all::add)));
        return all;
    }

    public Outlook outlook() {
        return outlook;
    }

    public WorthFigures figures() {
        return figures;
    }

    /** The chasers, in the order of all values by group. */
    public List<ChaserGroup> groups() {
        return groups;
    }

    /** Whether anybody needs anything. */
    public boolean isAnythingWanted() {
        return wanted().stream().anyMatch(this::isNeeded);
    }

    /** What the site lacks on the local day of an instant. */
    public SiteReadiness readiness(Site site, Instant at) {
        return readiness.computeIfAbsent(site, any -> new ConcurrentHashMap<>()).computeIfAbsent(
                at.atZone(outlook.zone()).toLocalDate(), day -> SiteReadiness.of(site, day, outlook.event().getPolicies()));
    }

    /** A turn as chasers may profit from it; worth nothing where there is no pass. It happens with the usual chance. */
    public TurnChance chance(Site site, Bird bird, Window turn) {
        return known.of(outlook.versions().of(site), outlook.versions().of(bird), turn, usable(site, turn),
                () -> computed(site, bird, turn));
    }

    private TurnChance computed(Site site, Bird bird, Window turn) {
        return outlook.passes(site, bird).stream().filter(pass -> pass.pass().window().overlaps(turn))
                .max(Comparator.comparing(pass -> pass.pass().window().intersection(turn).orElseThrow().duration()))
                .map(pass -> chance(pass, turn)).orElseGet(() -> chance(site, bird, turn, nothing()));
    }

    /** The same for a known pass; what lies outside of it does not count. */
    public TurnChance chance(SitePass pass, Window turn) {
        List<GroupMinutes> served = pass.pass().window().intersection(turn).map(part -> known.minutes().of(
                outlook.ephemeris(pass.pass()),
                new Viewpoint(outlook.place(pass.site()), outlook.horizon(pass.site())), part)).orElseGet(this::nothing);
        return chance(pass.site(), pass.bird(), turn, served);
    }

    private TurnChance chance(Site site, Bird bird, Window turn, List<GroupMinutes> served) {
        return TurnChance.of(outlook.squares(site), groups, served, turn.duration().toMillis() / 60_000.0,
                figures.contactsPerMinute(bird.getMode()), BirdBelief.of(bird, turn.start(), figures).chance(figures),
                figures.happens(), usable(site, turn), figures);
    }

    private double usable(Site site, Window turn) {
        return readiness(site, turn.start()).chance(figures);
    }

    private List<GroupMinutes> nothing() {
        return groups.stream().map(group -> new GroupMinutes(0, 0, 0)).toList();
    }

    /** What turns are worth together. */
    public PlanWorth of(Collection<TurnChance> turns) {
        return new PlanWorth(groups, wanted(), turns);
    }

    /**
     * Part of those whom a turn could serve with one of its squares that earlier turns are expected to serve with it, 0 to 1;
     * 1 for a square that nobody needs.
     */
    public double taken(Square square, TurnChance turn, Collection<TurnChance> earlier) {
        if (!isNeeded(square)) {
            return 1;
        }
        double[] unserved = unserved(square, earlier);
        boolean claims = turn.squares().contains(square);
        double alone = 0;
        double more = 0;
        for (int g = 0; g < unserved.length; g++) {
            double needed = groups.get(g).needs().of(square);
            double chance = turn.groups().get(g).probability();
            alone += claims ? needed * chance : 0;
            more += needed * unserved[g] * chance;
        }
        return alone > 0 ? 1 - more / alone : 0;
    }

    /** For each group, the chance that none of some turns serves one of it with a square. */
    private double[] unserved(Square square, Collection<TurnChance> turns) {
        double[] unserved = new double[groups.size()];
        Arrays.fill(unserved, 1);
        for (TurnChance turn : turns) {
            if (turn.squares().contains(square)) {
                for (int g = 0; g < unserved.length; g++) {
                    unserved[g] *= 1 - turn.groups().get(g).probability();
                }
            }
        }
        return unserved;
    }

    /** Whether a turn comes too late for one of its squares: earlier turns serve too many of those whom it could serve. */
    public boolean isTooOften(Square square, TurnChance turn, Collection<TurnChance> earlier) {
        return taken(square, turn, earlier) > figures.tooOften();
    }

    /** Whether anybody needs a square. */
    public boolean isNeeded(Square square) {
        return groups.stream().anyMatch(group -> group.needs().of(square) > 0);
    }

    /** The turns of the event's plan that can be used, each happening with the usual chance. */
    public Map<Turn, TurnChance> turns() {
        Map<Turn, TurnChance> turns = new HashMap<>();
        List<Work> works = new ArrayList<>(Itinerary.of(outlook.event()).turns());
        works.forEach(work -> turns.put(work.turn(), chance(work.site(), work.bird(), work.window())));
        return turns;
    }

    /** What the event's plan is worth. */
    public PlanWorth plan() {
        return of(turns().values());
    }
}
