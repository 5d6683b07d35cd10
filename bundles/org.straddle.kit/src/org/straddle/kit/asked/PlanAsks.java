package org.straddle.kit.asked;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.straddle.kit.team.Inventory;
import org.straddle.model.Hazard;
import org.straddle.model.SafetyUse;
import org.straddle.model.Site;
import org.straddle.model.Visit;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.safety.HighVisibility;
import org.straddle.safety.Light;
import org.straddle.safety.SafetyNotes;
import org.straddle.sky.Place;
import org.straddle.words.Catalogue;

/**
 * What the plan of a team asks for, and how its packing list meets it.
 *
 * @param things  one for each use, in the order of {@link SafetyUse}
 * @param marking what to lay down at each line and corner, a sentence each
 * @param lookout who watches the traffic, a sentence; empty where no traffic passes
 */
public record PlanAsks(List<Provided> things, List<String> marking, Optional<String> lookout) {

    private static final Catalogue TEXTS = Catalogue.of(PlanAsks.class);

    public PlanAsks {
        things = List.copyOf(things);
        marking = List.copyOf(marking);
    }

    /** Nothing for a team without stops. */
    public static PlanAsks of(Team team, Outlook outlook, Itinerary itinerary) {
        return itinerary.of(team).isEmpty() ? new PlanAsks(List.of(), List.of(), Optional.empty())
                : new Search(team, outlook, itinerary.of(team)).run();
    }

    /** What is asked for and not packed. */
    public List<Provided> lacking() {
        return lacking(things);
    }

    /** The same without a word on anything else, which is quicker. */
    public static List<Provided> lacking(Team team, Outlook outlook, Itinerary itinerary) {
        return itinerary.of(team).isEmpty() ? List.of() : lacking(new Search(team, outlook, itinerary.of(team)).things());
    }

    private static List<Provided> lacking(List<Provided> things) {
        return things.stream().filter(thing -> !thing.isMet()).toList();
    }

    /** Looks through the stops of one team. */
    private static final class Search {

        private final Outlook outlook;
        private final Team team;
        private final List<Stay> stays;
        private final int people;
        private final Map<SafetyUse, Double> amounts = new EnumMap<>(SafetyUse.class);
        private final Map<SafetyUse, Set<String>> reasons = new EnumMap<>(SafetyUse.class);
        private final Map<SafetyUse, List<Object>> facts = new EnumMap<>(SafetyUse.class);
        private final List<LineMark> marks = new ArrayList<>();
        private final Set<String> traffic = new LinkedHashSet<>();
        private int vestClass;

        Search(Team team, Outlook outlook, List<Stay> stays) {
            this.team = team;
            this.outlook = outlook;
            this.stays = stays;
            this.people = Math.max(1, (int) team.getOperators().stream().filter(operator -> !operator.eIsProxy()).count());
        }

        PlanAsks run() {
            List<Provided> things = things();
            List<String> marking = marks.stream().map(mark -> mark.sentence(outlook)).distinct().toList();
            return new PlanAsks(things, marking, lookout());
        }

        List<Provided> things() {
            for (Stay stay : stays) {
                SafetyNotes notes = SafetyNotes.of(stay.site(), day(stay), outlook.event().getPolicies());
                if (notes.hasTraffic()) {
                    traffic(stay, notes.visit().orElseThrow());
                }
                notes.visit().ifPresent(visit -> visit.getHazards().forEach(hazard -> measure(stay.site(), hazard)));
                LineMark.of(outlook, stay.site()).ifPresent(this::mark);
            }
            ask(SafetyUse.FIRST_AID, 1, TEXTS.text("because.everyTeam"), "");
            Thirst.worst(stays, outlook).ifPresent(this::water);
            return amounts.entrySet().stream()
                    .map(entry -> new Asked(entry.getKey(), entry.getValue(), entry.getKey() == SafetyUse.VEST ? Math.max(2, vestClass) : 0,
                            List.copyOf(reasons.get(entry.getKey())), facts.get(entry.getKey())))
                    .map(asked -> Provided.of(asked, Inventory.carriedBy(team))).toList();
        }

        private LocalDate day(Stay stay) {
            return stay.window().start().atZone(outlook.zone()).toLocalDate();
        }

        private void traffic(Stay stay, Visit visit) {
            Light light = outlook.isPlaced(stay.site())
                    ? Light.during(Place.of(stay.site().getLatitudeDeg(), stay.site().getLongitudeDeg()), stay.window()) : Light.UNKNOWN;
            double speed = visit.getRoadSpeedKmh() > 0 && Double.isFinite(visit.getRoadSpeedKmh()) ? visit.getRoadSpeedKmh() : Double.NaN;
            int ofCountry = HighVisibility.ofCountries(outlook.jurisdictions(stay.site()));
            int asked = HighVisibility.at(speed, light, ofCountry).number();
            vestClass = Math.max(vestClass, asked);
            traffic.add(Naming.name(stay.site()));
            ask(SafetyUse.VEST, people, TEXTS.text("because.traffic", "site", Naming.name(stay.site()), "known", speed > 0 ? "yes" : "no", "speed", speed,
                    "light", light.name(), "country", asked > HighVisibility.at(speed, light).number() ? "yes" : "no", "class", asked),
                    stay.site().getId() + " " + speed + " " + light + (ofCountry > 0 ? " " + ofCountry : ""));
        }

        private void measure(Site site, Hazard hazard) {
            String words = hazard.getMeasure() == null ? "" : hazard.getMeasure().strip().replaceAll("\\s+", " ");
            for (SafetyWords.Named named : SafetyWords.in(words)) {
                boolean each = named.use() == SafetyUse.LIFE_VEST || named.use() == SafetyUse.VEST;
                ask(named.use(), named.count().orElse(each ? people : 1), TEXTS.text("because.measure", "site", Naming.name(site),
                        "hazard", Naming.of(hazard.getKind()), "measure", words), site.getId() + " " + hazard.getKind() + " " + words);
            }
        }

        private void mark(LineMark mark) {
            String because = TEXTS.text("because.line", "site", Naming.name(mark.site()), "boundary", mark.boundary());
            ask(SafetyUse.TAPE, mark.tape(), because, mark.site().getId() + " " + mark.boundary());
            ask(SafetyUse.CONE, LineMark.CONES, because, mark.site().getId() + " " + mark.boundary());
            marks.add(mark);
        }

        private void water(Thirst thirst) {
            double litres = Math.ceil(people * thirst.litresEach() * 2) / 2;
            ask(SafetyUse.WATER, litres, TEXTS.text("because.water", "people", people, "hours", thirst.out().toMinutes() / 60.0, "day",
                    thirst.day(), "heat", thirst.heat().map(hot -> hot ? "hot" : "mild").orElse("unknown")), thirst);
        }

        /** The same things serve at every stop, so the largest amount is enough. */
        private void ask(SafetyUse use, double amount, String because, Object fact) {
            amounts.merge(use, amount, Math::max);
            reasons.computeIfAbsent(use, any -> new LinkedHashSet<>()).add(because);
            facts.computeIfAbsent(use, any -> new ArrayList<>()).add(String.valueOf(fact));
        }

        private Optional<String> lookout() {
            return traffic.isEmpty() ? Optional.empty()
                    : Optional.of(TEXTS.text("lookout", "sites", List.copyOf(traffic), "people", people, "others", people - 1));
        }
    }
}
