package org.straddle.outlook;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;
import org.locationtech.jts.geom.Geometry;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.Geodesic;
import org.straddle.grid.Presence;
import org.straddle.grid.Square;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.BirdElements;
import org.straddle.model.BirdState;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Jurisdiction;
import org.straddle.model.EnteredDrive;
import org.straddle.model.Region;
import org.straddle.model.Site;
import org.straddle.model.Versions;
import org.straddle.sky.ElementSet;
import org.straddle.sky.ElementSetException;
import org.straddle.sky.ErrorGrowth;
import org.straddle.sky.Horizon;
import org.straddle.sky.Pass;
import org.straddle.sky.Place;
import org.straddle.sky.Viewpoint;
import org.straddle.sky.Window;
import org.straddle.sky.Windows;
import org.straddle.sky.prediction.Area;
import org.straddle.sky.prediction.AreaReach;
import org.straddle.sky.prediction.EarthOrientation;
import org.straddle.sky.prediction.Ephemeris;
import org.straddle.sky.prediction.PassError;
import org.straddle.sky.prediction.PassSearch;
import org.straddle.sky.prediction.Sun;
import org.straddle.words.Catalogue;

/**
 * An event seen through sky and grid: what can be known of its sites, birds and roads before anybody
 * decides who goes where.
 *
 * <p>Give it a {@link org.straddle.model.Snapshot}; it reads the event and never changes it. What takes
 * long, the passes, is found when the outlook is made and remembered by input: after an edit of one
 * site only that site is searched anew by the next outlook. What cannot be computed is listed in
 * {@link #troubles()} and left out elsewhere. Once made it may be asked by many threads, as long as
 * nobody edits the event.
 */
public final class Outlook {

    private static final Catalogue TEXTS = Catalogue.of(Outlook.class);

    /** Shared, so that one outlook profits from what the one before it found. */
    static final PassSearch SHARED_SEARCH = new PassSearch();

    /** Some megabytes. */
    private static final int MOST_FOOTPRINTS = 20_000;

    private static final Comparator<SitePass> IN_TIME_ORDER = Comparator.comparing((SitePass p) -> p.pass().aos())
            .thenComparing(p -> p.pass().los())
            .thenComparing(p -> String.valueOf(p.site().getId()))
            .thenComparing(p -> String.valueOf(p.bird().getId()));

    private record SiteAndBird(Site site, Bird bird) {
    }

    private record Footprint(Place place, List<ElementSets.Reign> reigns) {
    }

    private final Event event;
    private final PassSearch search;
    private final List<Trouble> troubles = new ArrayList<>();
    private final ZoneId zone;
    private final Optional<Window> knownSpan;
    private final Window span;
    private final PolicyFigures policies;
    private final Demands demand;
    private final Map<Site, Viewpoint> viewpoints = new LinkedHashMap<>();
    private final Map<Bird, ElementSets> elements = new LinkedHashMap<>();
    /** Null until somebody asks for a list of passes, in an outlook made {@link #toWalk}. */
    private FoundPasses found;
    /** Null in an outlook whose passes are found when it is made. */
    private final PassWalks walks;
    private final Map<SiteAndBird, List<SitePass>> unpacked = new ConcurrentHashMap<>();
    private final Map<Site, List<SitePass>> bySite = new ConcurrentHashMap<>();
    private volatile List<SitePass> passes;
    private final Reach reach;
    private final Map<Jurisdiction, Ground> jurisdictions;
    private final EnteredDrives enteredDrives;
    private final Map<Site, SortedSet<Square>> squares = new ConcurrentHashMap<>();
    private final Map<Identified, List<Jurisdiction>> jurisdictionsOf = new ConcurrentHashMap<>();
    private final Map<Footprint, List<Window>> aboveZero;
    private final Map<SiteAndBird, List<Window>> aboveZeroHere = new ConcurrentHashMap<>();
    private final Versions versions;

    /**
     * @param before of an earlier copy of the event, or null
     * @param toWalk whether to leave the search for passes to those who come for them
     */
    private Outlook(Event event, PassSearch search, Outlook before, boolean toWalk, SubMonitor progress) {
        this.event = event;
        this.search = search;
        this.versions = before == null ? Versions.of(event) : before.versions.next(event);
        this.zone = readZone();
        this.knownSpan = EventSpan.of(event, zone).map(this::bounded);
        this.span = knownSpan.orElse(Window.of(Instant.EPOCH, Duration.ofDays(1)));
        if (knownSpan.isEmpty()) {
            tell(Trouble.Kind.DAYS, event,
                    TEXTS.text("outlook.eventHasDays"));
        }
        this.policies = PolicyFigures.of(event.getPolicies());
        this.demand = readDemand();
        event.getBases().forEach(this::readBase);
        Map<Object, Viewpoint> known = before == null ? Map.of() : before.viewpointsByVersion();
        event.getSites().forEach(site -> readSite(site, known.get(versions.of(site))));
        event.getBirds().forEach(this::readElements);
        EventPasses finder = new EventPasses(search, span, troubles::add);
        this.walks = toWalk && knownSpan.isPresent() ? finder.prepare(elements, progress) : null;
        this.found = knownSpan.isEmpty() ? FoundPasses.NONE : toWalk ? null : finder.find(viewpoints, elements, progress);
        this.reach = Reach.of(this, readRegions());
        this.jurisdictions = readJurisdictions();
        this.enteredDrives = EnteredDrives.of(event);
        this.aboveZero = before != null && before.conditions().equals(conditions())
                && before.aboveZero.size() < MOST_FOOTPRINTS ? before.aboveZero : new ConcurrentHashMap<>();
    }

    /**
     * @param monitor told of progress; may be null
     * @throws OperationCanceledException soon after cancellation
     */
    public static Outlook of(Event event, IProgressMonitor monitor) {
        return of(event, SHARED_SEARCH, monitor);
    }

    /** The same with a search of one's own, such as one with Earth orientation data; keep it for the next outlook. */
    public static Outlook of(Event event, PassSearch search, IProgressMonitor monitor) {
        return new Outlook(event, search, null, false, SubMonitor.convert(monitor, TEXTS.text("outlook.findsPasses"), 100));
    }

    /**
     * The same for somebody who goes through all passes once, by {@link #passesInOrder}: no pass is found before it is
     * asked for, and none is kept, so the first of a large event is there at once.
     */
    public static Outlook toWalk(Event event, PassSearch search, IProgressMonitor monitor) {
        return new Outlook(event, search, null, true, SubMonitor.convert(monitor, TEXTS.text("outlook.findsPasses"), 100));
    }

    /**
     * Of a later copy of the event that another outlook is of: what did not change is taken over from there.
     *
     * @param before kept no longer than this takes
     */
    public static Outlook after(Outlook before, Event event, PassSearch search, IProgressMonitor monitor) {
        return new Outlook(event, search, before, false, SubMonitor.convert(monitor, TEXTS.text("outlook.findsPasses"), 100));
    }

    /** Of a later copy of the event, with the same search. */
    public Outlook with(Event later) {
        return after(this, later, search, null);
    }

    /** Which things are the same as in the outlook that this one was made after. */
    public Versions versions() {
        return versions;
    }

    /** What everything that is computed rests on besides the things of the event: its time, its zone, the Earth. */
    public List<Object> conditions() {
        return List.of(search, knownSpan, zone);
    }

    private Map<Object, Viewpoint> viewpointsByVersion() {
        Map<Object, Viewpoint> known = new HashMap<>();
        // What is wrong with a horizon must be told again.
        if (troubles.stream().noneMatch(trouble -> trouble.kind() == Trouble.Kind.HORIZON)) {
            viewpoints.forEach((site, viewpoint) -> known.put(versions.of(site), viewpoint));
        }
        return known;
    }

    public Event event() {
        return event;
    }

    /** The zone of an event without its passes: UTC when it is not set or not known. */
    public static ZoneId zoneOf(Event event) {
        return knownZone(event).orElse(ZoneOffset.UTC);
    }

    /** The event's zone, or UTC when it is not set. */
    public ZoneId zone() {
        return zone;
    }

    /**
     * From the first team's leaving to the last team's return, or the event's local days when teams have
     * no days. Without either, a placeholder: see {@link #hasSpan()}.
     */
    public Window span() {
        return span;
    }

    /** Whether the event says when it is; if not, there are no passes, and {@link #span()} is the first day of 1970. */
    public boolean hasSpan() {
        return knownSpan.isPresent();
    }

    /** The policies, with defaults in place of what is missing. */
    public PolicyFigures policies() {
        return policies;
    }

    /** What could not be computed, and why. */
    public List<Trouble> troubles() {
        return Collections.unmodifiableList(troubles);
    }

    /** Whether the site has a position that can be. */
    public boolean isPlaced(Site site) {
        return isPosition(site.getLatitudeDeg(), site.getLongitudeDeg());
    }

    /** Whether the base has a position that can be. */
    public boolean isPlaced(Base base) {
        return isPosition(base.getLatitudeDeg(), base.getLongitudeDeg());
    }

    /** @throws IllegalArgumentException unless {@link #isPlaced(Site)} */
    public GeoPosition position(Site site) {
        return new GeoPosition(site.getLatitudeDeg(), site.getLongitudeDeg());
    }

    /** @throws IllegalArgumentException unless {@link #isPlaced(Base)} */
    public GeoPosition position(Base base) {
        return new GeoPosition(base.getLatitudeDeg(), base.getLongitudeDeg());
    }

    /** The mark with its height; a height that cannot be counts as 0. @throws IllegalArgumentException unless placed */
    public Place place(Site site) {
        GeoPosition position = position(site);
        double altitudeM = site.getAltitudeM() >= -1000 && site.getAltitudeM() <= 100_000 ? site.getAltitudeM() : 0;
        return new Place(position.latitudeDeg(), position.longitudeDeg(), altitudeM);
    }

    /** The site's mask; level at 0° when nobody took one. */
    public Horizon horizon(Site site) {
        Viewpoint known = viewpoints.get(site);
        return known == null ? SiteHorizon.of(site, trouble -> { }) : known.horizon();
    }

    /** The squares that a station at the site claims; names that are no squares are skipped. */
    public SortedSet<Square> squares(Site site) {
        return squares.computeIfAbsent(site, Outlook::readSquares);
    }

    /**
     * How likely a station at the site occupies all squares it claims; empty when the claim cannot be
     * argued at all, because the site has no position or the squares do not meet at it.
     */
    public Optional<Presence> presence(Site site) {
        return argument(site).map(PresenceArgument::presence);
    }

    /** The same with what would lift it; empty in the same cases. */
    public Optional<PresenceArgument> argument(Site site) {
        return argument(site, squares(site));
    }

    /** The same for squares that the site might claim instead. */
    public Optional<PresenceArgument> argument(Site site, Set<Square> claimed) {
        return isPlaced(site) && site.getMarkErrorM() >= 0 && Double.isFinite(site.getMarkErrorM())
                ? ClaimedSpread.of(position(site), claimed, policies.stationSpanM())
                        .map(spread -> new PresenceArgument(spread, site.getMarkErrorM(), policies.leastPresence()))
                : Optional.empty();
    }

    /**
     * Share of chasers that still need a square, 0 to 1. While the event lists no demand at all, every
     * square counts as 1; once it lists some, a square that is not listed counts as 0.
     */
    public double demand(Square square) {
        return demand.of(square);
    }

    /** The usable element set whose epoch is nearest to an instant. */
    public Optional<ElementSet> elementSet(Bird bird, Instant instant) {
        ElementSets sets = elements.get(bird);
        return sets == null ? Optional.empty() : sets.nearest(instant);
    }

    /**
     * Where the bird is through the span, from the element set nearest to an instant; empty when there is
     * none. Ask it for times inside {@link #span()} only.
     */
    public Optional<Ephemeris> ephemeris(Bird bird, Instant instant) {
        return elementSet(bird, instant).map(this::ephemeris);
    }

    /** All passes, by AOS. Gathered when first asked for. */
    public List<SitePass> passes() {
        List<SitePass> known = passes;
        if (known == null) {
            known = sorted(foundPasses().sites().stream().flatMap(site -> passes(site).stream()));
            passes = known;
        }
        return known;
    }

    /**
     * The same passes of some sites and birds in the same order, each made as it is taken: for all passes of a large event,
     * of which nobody needs two at a time.
     */
    public Stream<SitePass> passesInOrder(Predicate<Site> sites, Predicate<Bird> birds) {
        return MergedPasses.of(viewpoints.entrySet().stream().filter(entry -> sites.test(entry.getKey()))
                .flatMap(entry -> walks == null
                        ? foundPasses().birds().stream().filter(birds)
                                .map(bird -> foundPasses().of(entry.getKey(), bird).iterator())
                        : walks.over(entry.getKey(), entry.getValue(), birds)).toList(), IN_TIME_ORDER);
    }

    private synchronized FoundPasses foundPasses() {
        if (found == null) {
            // What is wrong with the elements was told when the walks were prepared.
            found = new EventPasses(search, span, trouble -> { }).find(viewpoints, elements, SubMonitor.convert(null));
        }
        return found;
    }

    /** The passes over one site, by AOS. */
    public List<SitePass> passes(Site site) {
        return bySite.computeIfAbsent(site, asked -> sorted(
                foundPasses().birds().stream().flatMap(bird -> passes(asked, bird).stream())));
    }

    /** The passes of one bird over one site, by AOS. */
    public List<SitePass> passes(Site site, Bird bird) {
        // Found passes are packed: those that are asked for once are asked for again.
        return unpacked.computeIfAbsent(new SiteAndBird(site, bird),
                asked -> List.copyOf(foundPasses().of(site, bird)));
    }

    /**
     * A region's outlines, x is the longitude, degrees on WGS-84; across 180° they go on counting. Empty when what is
     * entered makes no area.
     */
    public Optional<Geometry> shape(Region region) {
        return reach.regions().contains(region)
                ? Optional.of(Ground.of(region.getSquares(), region.getOutline()).shape()) : Optional.empty();
    }

    /** Whom the passes reach. */
    public Reach reach() {
        return reach;
    }

    /** Where the bird of a pass is through the span, by the element set of the pass. */
    public Ephemeris ephemeris(Pass pass) {
        return ephemeris(pass.elements());
    }

    /** How far the real pass may be from the computed one. */
    public PassError error(Pass pass) {
        return PassError.of(pass, ErrorGrowth.USUAL, search.orientation());
    }

    /** What is known of the Earth's turning; passes rest on it. */
    public EarthOrientation orientation() {
        return search.orientation();
    }

    /**
     * What is missing of the Earth's turning for the time of the event, in a sentence; empty when the data cover
     * it. It is part of {@link #error}, and too little to be a trouble.
     */
    public Optional<String> orientationNotice() {
        return search.orientation().notice(span);
    }

    /** Whether the bird stays above the site's mask during the whole window. */
    public boolean above(Bird bird, Site site, Window window) {
        return passes(site, bird).stream().anyMatch(p -> p.pass().window().contains(window));
    }

    /** The times within a window at which both sites have the bird above 0°, masks or not. */
    public List<Window> sharedFootprint(Bird bird, Window within, Site a, Site b) {
        return Windows.common(Windows.clipped(aboveZero(a, bird), within), Windows.clipped(aboveZero(b, bird), within));
    }

    /**
     * The times within a window at which the bird can be expected to answer: never when it is reported not
     * working; else when its calendar has it on and, if it works by sunlight only, the sun shines on it.
     */
    public List<Window> workable(Bird bird, Window within) {
        if (isNotWorking(bird)) {
            return List.of();
        }
        List<Window> on = switchedOn(bird, within);
        return bird.isLitOnly() ? Windows.common(on, lit(bird, within)) : on;
    }

    /** Whether a bird is reported dead: nobody can be worked through it. */
    public static boolean isNotWorking(Bird bird) {
        return bird.getState() == BirdState.NOT_WORKING;
    }

    /** The times within a window at which the bird's calendar has it on: always, without a calendar. */
    public List<Window> switchedOn(Bird bird, Window within) {
        if (bird.getCalendar().isEmpty()) {
            return List.of(within);
        }
        return Windows.joined(bird.getCalendar().stream().flatMap(period -> {
            Instant from = period.getFrom() == null ? within.start() : period.getFrom();
            Instant until = period.getUntil() == null ? within.end() : period.getUntil();
            return from.isBefore(until) ? new Window(from, until).intersection(within).stream() : Stream.empty();
        }).toList());
    }

    /** The times within a window, clipped to the span, at which the whole sun shines on the bird. */
    public List<Window> lit(Bird bird, Window within) {
        ElementSets sets = elements.get(bird);
        if (sets == null) {
            return List.of();
        }
        return Windows.joined(span.intersection(within).stream().flatMap(w -> sets.reigns(w).stream())
                .flatMap(reign -> ephemeris(reign.set()).sunlit(reign.window()).stream()).toList());
    }

    /** The parts of the world with licences of their own that the site lies in; empty when none is written down. */
    public List<Jurisdiction> jurisdictions(Site site) {
        return jurisdictions((Identified) site);
    }

    /** The same of a site or a base. */
    List<Jurisdiction> jurisdictions(Identified place) {
        return jurisdictionsOf.computeIfAbsent(place, any -> whereIs(any).map(here -> jurisdictions.entrySet().stream()
                .filter(entry -> entry.getValue().contains(here)).map(Map.Entry::getKey).toList()).orElse(List.of()));
    }

    /** How long a team may drive that goes to these sites and bases. */
    public DrivingLaw drivingLaw(Collection<? extends Identified> places) {
        return DrivingLaw.of(this, places);
    }

    /**
     * Whether the bird stands above 0° somewhere in a jurisdiction at some time of a window, clipped to
     * the span; false where no prediction reaches.
     */
    public boolean isUpIn(Jurisdiction jurisdiction, Bird bird, Window during) {
        Ground ground = jurisdictions.get(jurisdiction);
        Optional<Ephemeris> ephemeris = ephemeris(bird, during.start());
        Optional<Window> known = knownSpan.flatMap(during::intersection)
                .filter(w -> ephemeris.flatMap(Ephemeris::predictionEnd).filter(w.end()::isAfter).isEmpty());
        return ground != null && known.isPresent() && ephemeris.isPresent()
                && AreaReach.isEver(ephemeris.get(), known.get(), ground.area(), 0);
    }

    /**
     * An estimate of a drive: the shortest way on the ellipsoid times the detour factor at the road speed,
     * and a break after every full stretch of driving that is followed by more driving.
     */
    public Road road(GeoPosition from, GeoPosition to) {
        double roadKm = Geodesic.distanceM(from, to) / 1000 * policies.detourFactor();
        Duration driving = Duration.ofSeconds(Math.round(roadKm / policies.roadSpeedKmh() * 3600));
        return new Road(roadKm, driving, breaks(driving, drivingLaw(List.of())));
    }

    /**
     * The drive between two places of the event, each a site or a base: as somebody entered it for this pair, in
     * whichever direction, else an estimate. Breaks are due as the countries at its ends ask. Empty when one has no position.
     */
    public Optional<Road> road(Identified from, Identified to) {
        Optional<GeoPosition> here = whereIs(from);
        Optional<GeoPosition> there = whereIs(to);
        if (here.isEmpty() || there.isEmpty()) {
            return Optional.empty();
        }
        Road estimate = road(here.get(), there.get());
        DrivingLaw law = drivingLaw(List.of(from, to));
        return Optional.of(enteredDrives.between(from, to).map(entered -> entered(entered, estimate, law))
                .orElseGet(() -> new Road(estimate.roadKm(), estimate.driving(), breaks(estimate.driving(), law))));
    }

    private Road entered(EnteredDrive entered, Road estimate, DrivingLaw law) {
        Duration driving = Duration.ofSeconds(Math.round(entered.getMinutes() * 60));
        double roadKm = entered.getRoadKm() > 0 && Double.isFinite(entered.getRoadKm()) ? entered.getRoadKm()
                : estimate.roadKm();
        String origin = entered.getOrigin() == null || entered.getOrigin().isBlank() ? "entered"
                : entered.getOrigin().strip();
        return new Road(roadKm, driving, breaks(driving, law), origin);
    }

    private Duration breaks(Duration driving, DrivingLaw law) {
        return policies.breakLength().multipliedBy(law.breaks(driving));
    }

    private Optional<GeoPosition> whereIs(Identified place) {
        if (place instanceof Site site && isPlaced(site)) {
            return Optional.of(position(site));
        }
        return place instanceof Base base && isPlaced(base) ? Optional.of(position(base)) : Optional.empty();
    }

    /** The times within a window from sunrise to sunset, as almanacs reckon them. */
    public List<Window> daylight(GeoPosition position, Window within) {
        return Sun.daylight(Place.of(position.latitudeDeg(), position.longitudeDeg()), within, Sun.SUNRISE_DEG);
    }

    private List<Window> aboveZero(Site site, Bird bird) {
        // Asked for the same by many pairs of turns; the key of what is known from before is long.
        return aboveZeroHere.computeIfAbsent(new SiteAndBird(site, bird), any -> !viewpoints.containsKey(site)
                || !elements.containsKey(bird) || !hasSpan() ? List.of() : aboveZero(place(site), bird));
    }

    private List<Window> aboveZero(Place place, Bird bird) {
        return aboveZero.computeIfAbsent(new Footprint(place, elements.get(bird).reigns(span)), key -> Windows.joined(
                key.reigns.stream()
                        .flatMap(reign -> ephemeris(reign.set()).above(place, reign.window(), 0).stream())
                        .toList()));
    }

    private Ephemeris ephemeris(ElementSet set) {
        return search.ephemeris(set, span, null);
    }

    private List<SitePass> sorted(Stream<SitePass> unsorted) {
        return unsorted.sorted(IN_TIME_ORDER).toList();
    }

    private void tell(Trouble.Kind kind, Identified object, String sentence) {
        troubles.add(new Trouble(kind, object, sentence));
    }

    private ZoneId readZone() {
        String written = event.getZone();
        Optional<ZoneId> known = knownZone(event);
        if (known.isEmpty() && written != null && !written.isBlank()) {
            tell(Trouble.Kind.TIME_ZONE, event,
                    TEXTS.text("outlook.timeZoneNot", "written", written));
        }
        return known.orElse(ZoneOffset.UTC);
    }

    private static Optional<ZoneId> knownZone(Event event) {
        String written = event.getZone();
        if (written == null || written.isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(ZoneId.of(written.strip()));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private Window bounded(Window whole) {
        if (whole.duration().compareTo(EventSpan.LONGEST) <= 0) {
            return whole;
        }
        tell(Trouble.Kind.DAYS, event, TEXTS.text("outlook.eventTakesDays", "toDays", whole.duration().toDays(),
                "start", whole.start(), "end", whole.end(), "toDays2", EventSpan.LONGEST.toDays()));
        return Window.of(whole.start(), EventSpan.LONGEST);
    }

    private Demands readDemand() {
        return Demands.of(event, name -> tell(Trouble.Kind.DEMAND_SQUARE, event, TEXTS.text("outlook.demandNamesWhich",
                "name", name)));
    }

    private Map<Jurisdiction, Ground> readJurisdictions() {
        Map<Jurisdiction, Ground> grounds = new LinkedHashMap<>();
        for (Jurisdiction jurisdiction : event.getJurisdictions()) {
            try {
                grounds.put(jurisdiction, Ground.of(jurisdiction.getSquares(), jurisdiction.getOutline()));
            } catch (IllegalArgumentException e) {
                tell(Trouble.Kind.JURISDICTION, jurisdiction, TEXTS.text("outlook.nothingKnownLicences",
                        "jurisdiction", Called.of(jurisdiction), "replaceFirst", e.getMessage().replaceFirst("\\.$", "")));
            }
        }
        return grounds;
    }

    private Map<Region, Area> readRegions() {
        Map<Region, Area> areas = new LinkedHashMap<>();
        for (Region region : event.getRegions()) {
            try {
                areas.put(region, Ground.of(region.getSquares(), region.getOutline()).area());
            } catch (IllegalArgumentException e) {
                tell(Trouble.Kind.REGION, region, TEXTS.text("outlook.nothingKnownWhom", "region", Called.of(region),
                        "replaceFirst", e.getMessage().replaceFirst("\\.$", "")));
            }
        }
        return areas;
    }

    /** @param known what the site sees if it did not change, or null */
    private void readSite(Site site, Viewpoint known) {
        if (known != null) {
            viewpoints.put(site, known);
        } else if (isPlaced(site)) {
            viewpoints.put(site, new Viewpoint(place(site), SiteHorizon.of(site, troubles::add)));
        } else {
            tellPosition(site, Called.of(site), site.getLatitudeDeg(), site.getLongitudeDeg());
        }
    }

    private void readBase(Base base) {
        if (!isPlaced(base)) {
            tellPosition(base, Called.of(base), base.getLatitudeDeg(), base.getLongitudeDeg());
        }
    }

    private void tellPosition(Identified object, String name, double latitudeDeg, double longitudeDeg) {
        tell(Trouble.Kind.POSITION, object, TEXTS.text("outlook.positionCannotLatitude", "name", name,
                "latitudeDeg", latitudeDeg, "longitudeDeg", longitudeDeg));
    }

    private void readElements(Bird bird) {
        List<ElementSet> usable = new ArrayList<>();
        for (BirdElements stored : bird.getElementSets()) {
            try {
                usable.add(StoredElements.toElementSet(stored));
            } catch (ElementSetException e) {
                tell(Trouble.Kind.ELEMENTS_UNUSABLE, bird, TEXTS.text("outlook.elementSetCannot",
                        "bird", Called.of(bird), "reason", e.getMessage()));
            }
        }
        if (bird.getElementSets().isEmpty()) {
            tell(Trouble.Kind.ELEMENTS_MISSING, bird,
                    TEXTS.text("outlook.thereElementSet", "bird", Called.of(bird)));
        }
        elements.put(bird, new ElementSets(usable));
    }

    private static SortedSet<Square> readSquares(Site site) {
        SortedSet<Square> named = new TreeSet<>();
        site.getSquares().forEach(name -> Square.named(name).ifPresent(named::add));
        return Collections.unmodifiableSortedSet(named);
    }

    private static boolean isPosition(double latitudeDeg, double longitudeDeg) {
        return Math.abs(latitudeDeg) <= 90 && Math.abs(longitudeDeg) <= 180;
    }
}
