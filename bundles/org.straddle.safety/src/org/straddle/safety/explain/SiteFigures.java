package org.straddle.safety.explain;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.model.DrivingSide;
import org.straddle.model.ExposureLimits;
import org.straddle.model.InertText;
import org.straddle.model.Jurisdiction;
import org.straddle.model.KitItem;
import org.straddle.model.Link;
import org.straddle.model.Role;
import org.straddle.model.Site;
import org.straddle.model.Visit;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.DrivingLaw;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Duty;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Wheel;
import org.straddle.outlook.itinerary.Work;
import org.straddle.safety.HighVisibility;
import org.straddle.safety.Light;
import org.straddle.safety.MastLimit;
import org.straddle.safety.RadioExposure;
import org.straddle.safety.SafetyNotes;
import org.straddle.safety.StoppingSight;
import org.straddle.sky.Place;
import org.straddle.sky.prediction.Sun;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;
import org.straddle.words.TimeText;

/** Works out all figures for a site as its stops use it. Every figure is rounded to the careful side. */
public final class SiteFigures {

    private static final Catalogue TEXTS = Catalogue.of(SiteFigures.class);

    /** Range of the published tables of stopping distance, km/h. */
    private static final double SLOWEST_KMH = 20;
    private static final double FASTEST_KMH = 130;

    /** A walking person, m/s: 3.5 ft/s, which US signals reckon with (MUTCD, from memory). */
    private static final double WALKING_MPS = 3.5 * 0.3048;

    /** Two lanes, metres; nobody measured the road (common practice, no source). */
    private static final double CARRIAGEWAY_M = 7;

    /** Uplinks this near to each other are one band, MHz. */
    private static final double BAND_MHZ = 20;

    private final Outlook outlook;
    private final Site site;
    private final List<Stay> stays;
    private final SafetyNotes notes;
    private final FigureText figures = FigureText.inCurrent();
    private final List<Figure> found = new ArrayList<>();

    private SiteFigures(Outlook outlook, Site site, List<Stay> stays, LocalDate day) {
        this.outlook = outlook;
        this.site = site;
        this.stays = stays;
        this.notes = SafetyNotes.of(outlook, site, day, light());
    }

    /**
     * @param stays the stops at the site that count
     * @param day local day on which the site is looked at
     */
    public static List<Figure> of(Outlook outlook, Site site, List<Stay> stays, LocalDate day) {
        SiteFigures all = new SiteFigures(outlook, site, stays, day);
        all.road();
        all.wires();
        all.radio();
        all.found.addAll(WeatherFigures.of(outlook, site, stays, day));
        all.driving();
        all.country();
        all.sun();
        return List.copyOf(all.found);
    }

    private void known(String key, Object... arguments) {
        found.add(FigureWords.known(key, arguments));
    }

    private void refused(String key, String why, Object... arguments) {
        found.add(FigureWords.refused(key, why, arguments));
    }

    private Light light() {
        return !outlook.isPlaced(site) || stays.isEmpty() ? Light.UNKNOWN : stays.stream()
                .map(stay -> Light.during(place(), stay.window())).max(Comparator.naturalOrder()).orElse(Light.UNKNOWN);
    }

    private Place place() {
        return Place.of(site.getLatitudeDeg(), site.getLongitudeDeg());
    }

    private void road() {
        double kmh = notes.visit().map(Visit::getRoadSpeedKmh).orElse(Double.NaN);
        if (notes.visit().isEmpty() || !(kmh >= 0) || kmh == 0 && notes.hasTraffic()) {
            refused("stopping", "speed");
            refused("crossing", "speed");
            clothing(Double.NaN);
            return;
        }
        if (kmh == 0) {
            return;
        }
        if (kmh < SLOWEST_KMH || kmh > FASTEST_KMH) {
            refused("stopping", "range", "kmh", figures.atMost(1, kmh));
            refused("crossing", "range", "kmh", figures.atMost(1, kmh));
        } else {
            int stopping = StoppingSight.roundedUp(StoppingSight.metres(kmh));
            known("stopping", "kmh", figures.atMost(1, kmh), "metres", stopping);
            double seconds = CARRIAGEWAY_M / WALKING_MPS;
            known("crossing", "kmh", figures.atMost(1, kmh), "seconds", figures.atMost(1, Math.ceil(seconds * 10) / 10), "metres",
                    Math.max(stopping, StoppingSight.roundedUp(seconds * kmh / 3.6)));
        }
        clothing(kmh);
    }

    private void clothing(double kmh) {
        int least = HighVisibility.at(kmh, light()).number();
        int local = HighVisibility.ofCountries(outlook.jurisdictions(site));
        known("clothing", "class", Math.max(least, local), "light", light().name(), "local", local > least ? "yes" : "no");
    }

    /** What the coordinator entered for the country, with where they read it. */
    private void country() {
        outlook.jurisdictions(site).stream().filter(country -> country.getDrivingSide() != DrivingSide.UNKNOWN)
                .forEach(country -> known("country", "country", Naming.name(country), "side", country.getDrivingSide().name(), "told",
                        blank(country.getRulesSource()) ? "no" : "yes", "source", blank(country.getRulesSource()) ? "" : InertText.line(country.getRulesSource())));
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }

    private void wires() {
        Optional<MastLimit> limit = notes.mastLimit();
        if (notes.visit().isEmpty()) {
            refused("wires", "visit");
            return;
        }
        limit.ifPresent(most -> found.add(new Figure(TEXTS.text("what.wires"), most.sentence(), TEXTS.text("source.wires"), true, false)));
        limit.ifPresent(most -> raised().filter(item -> item.getRaisedM() > most.heightM()).forEach(item -> found.add(new Figure(
                TEXTS.text("what.wires"), TEXTS.text("known.wires.item", "item", Naming.name(item), "height",
                        figures.atMost(2, item.getRaisedM())), TEXTS.text("source.wires"), true, true))));
    }

    private Stream<KitItem> raised() {
        return items().filter(item -> item.getRaisedM() > 0);
    }

    private Stream<KitItem> items() {
        return stays.stream().map(Stay::team).distinct().flatMap(team -> team.getKits().stream()).distinct()
                .flatMap(kit -> kit.getItems().stream());
    }

    private void radio() {
        List<Work> turns = stays.stream().map(Stay::turns).flatMap(Collection::stream).toList();
        if (turns.isEmpty()) {
            return;
        }
        OptionalDouble watts = items().filter(item -> item.getTransmitsW() > 0).mapToDouble(KitItem::getTransmitsW).max();
        OptionalDouble gain = items().filter(item -> item.getRole() == Role.ANTENNA && item.getGainDbi() != 0)
                .mapToDouble(KitItem::getGainDbi).max();
        if (watts.isEmpty() || gain.isEmpty()) {
            refused("radio", "radio");
            return;
        }
        ExposureLimits whose = limits();
        turns.stream().map(work -> work.bird().getUplink()).filter(link -> link != null && link.getLowMhz() > 0)
                .map(Link::getLowMhz).collect(Collectors.toMap(mhz -> Math.round(mhz / BAND_MHZ), Function.identity(),
                        (one, other) -> stricter(whose, one, other), TreeMap::new)).values()
                .forEach(mhz -> radio(whose, watts.getAsDouble(), gain.getAsDouble(), mhz));
    }

    /** Of two frequencies of one band the one that asks for more room. */
    private static double stricter(ExposureLimits whose, double one, double other) {
        try {
            return RadioExposure.UNCONTROLLED.limitWm2(whose, one) <= RadioExposure.UNCONTROLLED.limitWm2(whose, other) ? one : other;
        } catch (IllegalArgumentException outside) {
            return Math.min(one, other);
        }
    }

    private void radio(ExposureLimits whose, double watts, double gainDbi, double mhz) {
        try {
            known("radio", "mhz", figures.atMost(3, mhz), "watts", figures.atMost(1, watts), "gain", figures.atMost(1, gainDbi),
                    "operators", up(RadioExposure.CONTROLLED.distanceM(whose, watts, gainDbi, mhz)), "others",
                    up(RadioExposure.UNCONTROLLED.distanceM(whose, watts, gainDbi, mhz)), "whose", Naming.of(whose));
        } catch (IllegalArgumentException outside) {
            refused("radio", "radio.range", "mhz", figures.atMost(3, mhz));
        }
    }

    /** Those of the country; the strictest where it says nothing, or where several lay claim to the site. */
    private ExposureLimits limits() {
        List<ExposureLimits> entered = outlook.jurisdictions(site).stream().map(Jurisdiction::getExposureLimits).distinct().toList();
        return entered.size() == 1 ? entered.get(0) : ExposureLimits.STRICTEST;
    }

    private String up(double metres) {
        return figures.fixed(1, Math.ceil(metres * 10) / 10);
    }

    /** Of the days on which a team stops there: time at the wheel, and from leaving to being back. */
    private void driving() {
        TimeText times = TimeText.of(outlook.zone());
        HoldFigures hold = HoldFigures.of(outlook.event().getPolicies());
        for (Team team : stays.stream().map(Stay::team).distinct().toList()) {
            List<Stay> all = Itinerary.of(outlook.event()).of(team);
            for (Duty duty : Duty.of(team, outlook, all, hold)) {
                if (duty.stays().stream().anyMatch(stays::contains)) {
                    DrivingLaw law = Wheel.law(outlook, duty.drives(), duty.day());
                    Duration wheel = Wheel.wholeMinutes(Wheel.driving(duty.drives(), duty.day()));
                    Duration out = Wheel.wholeMinutes(duty.window().duration());
                    known("driving", "team", team.getNumber(), "day", times.date(duty.window().start()), "wheel", wheel, "most",
                            law.limit(), "whose", whose(law.limitOf()), "over", wheel.compareTo(law.limit()) > 0 ? "yes" : "no",
                            "rest", law.breakAfter(), "asks", whose(law.breakOf()), "pause", outlook.policies().breakLength());
                    known("duty", "team", team.getNumber(), "day", times.date(duty.window().start()), "out", out, "most",
                            hold.longestDuty(), "over", duty.isTooLong(hold) ? "yes" : "no");
                }
            }
        }
    }

    private static String whose(Optional<Jurisdiction> country) {
        return country.map(Naming::name).orElse(TEXTS.text("whose.event"));
    }

    private void sun() {
        if (!outlook.isPlaced(site)) {
            return;
        }
        TimeText times = TimeText.of(outlook.zone());
        stays.stream().flatMap(stay -> stay.turns().stream()).forEach(work -> {
            Instant start = work.window().start();
            double elevation = Math.min(Sun.elevationDeg(place(), start), Sun.elevationDeg(place(), work.window().end()));
            if (elevation < Light.LOW_SUN_DEG) {
                known("sun", "bird", Naming.name(work.bird()), "at", times.at(start), "elevation",
                        figures.atMost(0, Math.floor(elevation)), "azimuth", figures.atMost(0, Sun.azimuthDeg(place(), start)), "dark",
                        elevation < Sun.SUNRISE_DEG ? "yes" : "no");
            }
        });
    }
}
