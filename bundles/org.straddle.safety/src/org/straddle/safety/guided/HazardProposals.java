package org.straddle.safety.guided;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.straddle.model.HazardKind;
import org.straddle.model.KitItem;
import org.straddle.model.OverheadLine;
import org.straddle.model.Site;
import org.straddle.model.Visit;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.safety.ColdLevel;
import org.straddle.safety.ForecastWarnings;
import org.straddle.safety.HeatLevel;
import org.straddle.safety.Light;
import org.straddle.safety.SafetyNotes;
import org.straddle.safety.WindLevel;
import org.straddle.sky.Place;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;
import org.straddle.words.TimeText;

/** What visit, plan, kit, forecast and maps say may hurt somebody at a site. Where facts are missing nothing is proposed, and the questions ask. */
public final class HazardProposals {

    private static final Catalogue TEXTS = Catalogue.of(HazardProposals.class);

    /** Something raised as high as this hurts when it falls, and stands out in a thunderstorm, m. Common practice, no source. */
    private static final double MAST_M = 3;

    /** Wires farther away than this have no hold on what a portable station raises, m. Common practice, no source. */
    private static final double WIRES_M = 200;

    /** In what visitors write of telephones. */
    private static final Pattern NO_PHONE = Pattern.compile("(?i)\\b(no|none|poor|weak|patchy)\\b");

    private final Outlook outlook;
    private final Site site;
    private final List<Stay> stays;
    private final Optional<Visit> visit;
    private final FigureText figures = FigureText.inCurrent();
    private final List<HazardProposal> found = new ArrayList<>();

    private HazardProposals(Outlook outlook, Site site, List<Stay> stays, LocalDate day) {
        this.outlook = outlook;
        this.site = site;
        this.stays = stays;
        this.visit = SafetyNotes.of(site, day, outlook.event().getPolicies()).visit();
    }

    /**
     * All that facts propose, whether somebody answered it or not.
     *
     * @param stays the stops at the site that count
     * @param wiresOnMapsM how far the nearest wires of the event's maps are from the mark, metres; empty where maps show none
     */
    public static List<HazardProposal> of(Outlook outlook, Site site, List<Stay> stays, LocalDate day, OptionalDouble wiresOnMapsM) {
        HazardProposals proposals = new HazardProposals(outlook, site, stays, day);
        proposals.visit.ifPresent(proposals::seen);
        proposals.maps(wiresOnMapsM);
        proposals.kit();
        proposals.light();
        proposals.weather();
        return List.copyOf(proposals.found);
    }

    /** Those that the newest visit of the day does not answer. */
    public static List<HazardProposal> open(Outlook outlook, Site site, List<Stay> stays, LocalDate day, OptionalDouble wiresOnMapsM) {
        Optional<Visit> visit = SafetyNotes.of(site, day, outlook.event().getPolicies()).visit();
        return of(outlook, site, stays, day, wiresOnMapsM).stream().filter(proposal -> visit.filter(proposal::isAnswered).isEmpty()).toList();
    }

    private void propose(HazardKind kind, String key, double distanceM, Object... facts) {
        found.add(new HazardProposal(kind, TEXTS.text("what." + key), TEXTS.text("because." + key, facts), distanceM, false));
    }

    private void seen(Visit seen) {
        if (seen.getRoadSpeedKmh() > 0) {
            propose(HazardKind.TRAFFIC, "traffic", 0, "kmh", figures.atMost(1, seen.getRoadSpeedKmh()));
        }
        seen.getOverheadLines().stream().min(Comparator.comparingDouble(OverheadLine::getDistanceM)).ifPresent(wires -> propose(HazardKind.POWER_LINE,
                "wires", Math.max(0, wires.getDistanceM()), "metres", figures.atMost(1, wires.getDistanceM())));
        if (seen.getPhoneCoverage() != null && NO_PHONE.matcher(seen.getPhoneCoverage()).find()) {
            propose(HazardKind.REMOTENESS, "remote", 0, "coverage", seen.getPhoneCoverage().strip());
        }
    }

    private void maps(OptionalDouble wiresM) {
        if (wiresM.isPresent() && wiresM.getAsDouble() <= WIRES_M && found.stream().noneMatch(known -> known.kind() == HazardKind.POWER_LINE)) {
            propose(HazardKind.POWER_LINE, "map", Math.floor(wiresM.getAsDouble()), "metres", (long) Math.floor(wiresM.getAsDouble()));
        }
    }

    private Stream<KitItem> items() {
        return stays.stream().map(Stay::team).distinct().flatMap(team -> team.getKits().stream()).distinct().filter(kit -> !kit.eIsProxy())
                .flatMap(kit -> kit.getItems().stream());
    }

    private void kit() {
        items().filter(item -> item.getRaisedM() >= MAST_M).max(Comparator.comparingDouble(KitItem::getRaisedM)).ifPresent(mast -> propose(
                HazardKind.OTHER, "mast", 0, "item", Naming.name(mast), "metres", figures.atMost(1, mast.getRaisedM())));
        items().filter(item -> item.getTransmitsW() > 0).max(Comparator.comparingDouble(KitItem::getTransmitsW)).ifPresent(radio -> propose(
                HazardKind.RADIO_FIELD, "radio", 0, "item", Naming.name(radio), "watts", figures.atMost(1, radio.getTransmitsW())));
    }

    private void light() {
        if (!outlook.isPlaced(site)) {
            return;
        }
        TimeText times = TimeText.of(outlook.zone());
        Place place = Place.of(site.getLatitudeDeg(), site.getLongitudeDeg());
        stays.stream().filter(stay -> Light.during(place, stay.window()) == Light.POOR).findFirst().ifPresent(stay -> propose(HazardKind.FOOTING,
                "dark", 0, "from", times.at(stay.window().start()), "until", times.clock(stay.window().end())));
    }

    private void weather() {
        for (Stay stay : stays) {
            LocalDate day = stay.window().start().atZone(outlook.zone()).toLocalDate();
            ForecastWarnings warned = ForecastWarnings.of(outlook.event(), site, day, Optional.of(stay.window()));
            if (warned.thunder()) {
                once(HazardKind.LIGHTNING, "thunder", day);
            }
            if (warned.heat() != HeatLevel.NONE) {
                once(HazardKind.HEAT, "heat", day);
            }
            if (warned.cold() != ColdLevel.NONE) {
                once(HazardKind.COLD, "cold", day);
            }
            if (warned.wind() != WindLevel.NONE) {
                once(HazardKind.OTHER, "wind", day);
            }
        }
    }

    private void once(HazardKind kind, String key, LocalDate day) {
        if (found.stream().noneMatch(known -> known.what().equals(TEXTS.text("what." + key)))) {
            found.add(new HazardProposal(kind, TEXTS.text("what." + key), TEXTS.text("forecast." + key, "day", day), 0, true));
        }
    }
}
