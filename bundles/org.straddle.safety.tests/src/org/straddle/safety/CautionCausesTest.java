package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.model.HazardKind.ANIMALS;
import static org.straddle.model.HazardKind.COLD;
import static org.straddle.model.HazardKind.FOOTING;
import static org.straddle.model.HazardKind.HEAT;
import static org.straddle.model.HazardKind.LIGHTNING;
import static org.straddle.model.HazardKind.OTHER;
import static org.straddle.model.HazardKind.POWER_LINE;
import static org.straddle.model.HazardKind.RADIO_FIELD;
import static org.straddle.model.HazardKind.REMOTENESS;
import static org.straddle.model.HazardKind.TRAFFIC;
import static org.straddle.model.HazardKind.WATER;
import static org.straddle.safety.SiteNotation.day;
import static org.straddle.safety.SiteNotation.hazard;
import static org.straddle.safety.SiteNotation.policies;
import static org.straddle.safety.SiteNotation.site;
import static org.straddle.safety.SiteNotation.wires;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.straddle.model.Fresh;
import org.straddle.model.HazardKind;
import org.straddle.model.Jurisdiction;
import org.straddle.model.OverheadLine;
import org.straddle.model.Site;
import org.straddle.model.Visit;

/** Every caution has a cause: a situation that prints it, and a near one that does not. */
class CautionCausesTest {

    private static final Properties TEXTS = texts();

    /**
     * What a visit saw.
     *
     * @param kmh speed of traffic; 0 when nobody wrote one down
     * @param countryClass of clothing that the country asks for; 0 when it asks for none
     * @param measure against each of its hazards
     */
    private record Seen(double kmh, Light light, int countryClass, List<OverheadLine> wires, String measure, HazardKind... kinds) {

        List<String> cautions() {
            Site site = site("visit 06-01");
            Visit visit = site.getVisits().get(0);
            visit.setRoadSpeedKmh(kmh);
            visit.getOverheadLines().addAll(wires);
            for (HazardKind kind : kinds) {
                visit.getHazards().add(hazard(kind, "seen there", 5, measure));
            }
            Jurisdiction country = Fresh.jurisdiction();
            country.setClothingClass(countryClass);
            SafetyNotes notes = SafetyNotes.of(site, day("06-20"), policies(), light, List.of(country));
            List<String> all = new ArrayList<>(notes.remarks());
            notes.hazards().forEach(note -> all.addAll(note.cautions()));
            return all;
        }
    }

    /**
     * @param printed with the cause
     * @param near without it
     */
    private record Cause(String key, List<String> printed, List<String> near) {
    }

    private static Seen of(HazardKind... kinds) {
        return new Seen(0, Light.DAY, 0, List.of(), "Agreed", kinds);
    }

    private static Seen road(double kmh, Light light) {
        return new Seen(kmh, light, 0, List.of(), "Agreed", TRAFFIC);
    }

    private static Seen road(double kmh, int countryClass) {
        return new Seen(kmh, Light.DAY, countryClass, List.of(), "Agreed", TRAFFIC);
    }

    private static Seen wired(String measure, boolean fromOwner) {
        return new Seen(0, Light.DAY, 0, List.of(wires(40, 20, fromOwner)), measure, POWER_LINE);
    }

    private static Seen measured(boolean fromOwner) {
        return new Seen(0, Light.DAY, 0, List.of(wires(40, 20, fromOwner)), "");
    }

    private static Stream<Cause> of(Seen seen, Seen near, String... keys) {
        return Stream.of(keys).map(key -> new Cause("cautions." + key, seen.cautions(), near.cautions()));
    }

    static List<Cause> causes() {
        return Stream.of(
                of(of(LIGHTNING), of(HEAT), "anyThunderStop", "stayThereLeast", "mastsComeDown"),
                of(of(HEAT), of(COLD), "confusionCollapseHot", "drink", "workShadeTake"),
                of(of(COLD), of(HEAT), "confusionFumblingHands", "knowWindChill", "snowKeepEngine"),
                of(of(FOOTING), of(WATER), "walkWayOnce", "markGuysCables"),
                of(of(WATER), of(FOOTING), "askTideSurf", "nobodyGoesNear"),
                of(of(ANIMALS), of(FOOTING), "staySoFar", "askOwnerWarden"),
                of(of(RADIO_FIELD), of(OTHER), "keepPeopleOut", "nearTransmitterSomebody"),
                of(of(REMOTENESS), of(OTHER), "leaveRouteTime", "knowWherePhone", "nobodyWorksThere"),
                of(of(OTHER), of(REMOTENESS), "agreeWhatDo"),
                of(of(TRAFFIC), of(FOOTING), "stayOffCarriageway", "onePersonWithout"),
                of(road(90, Light.DAY), road(0, Light.DAY), "stoppingDistance"),
                of(road(0, Light.DAY), road(90, Light.DAY), "visitDoesNot"),
                of(road(50, Light.POOR), road(50, Light.DAY), "poorLight"),
                of(road(50, Light.UNKNOWN), road(50, Light.DAY), "classFullDaylight"),
                of(road(50, 3), road(50, 2), "countryAsks"),
                of(wired("Agreed", false), of(FOOTING), "lookUpBefore"),
                of(measured(false), measured(true), "onlyOwnerWires"),
                of(wired("Stay 9 m away", true), wired("Stay away", true), "otherFigure"),
                // the form of a visit, before anybody measured
                Stream.of("everythingUprightStays", "mastsVehiclesAntennas", "lookUpWet")
                        .map(key -> new Cause("cautions." + key, Cautions.of(POWER_LINE), Cautions.of(FOOTING))))
                .flatMap(each -> each).toList();
    }

    @ParameterizedTest
    @MethodSource("causes")
    void isPrintedWithItsCauseOnly(Cause cause) {
        String says = TEXTS.getProperty(cause.key()).strip().replaceFirst("(?s)\\{.*", "");
        assertTrue(cause.printed().stream().anyMatch(line -> line.contains(says)), cause.key() + " not in " + cause.printed());
        assertFalse(cause.near().stream().anyMatch(line -> line.contains(says)), cause.key() + " in " + cause.near());
    }

    @Test
    void everyCautionHasACause() {
        Set<String> known = TEXTS.stringPropertyNames().stream().filter(key -> key.startsWith("cautions."))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(known, causes().stream().map(Cause::key).collect(Collectors.toCollection(TreeSet::new)));
    }

    /** Two hazards of a kind, and a road that a hazard names, say each caution once. */
    @Test
    void noCautionStandsTwiceOnASheet() {
        for (Light light : Light.values()) {
            List<String> all = new Seen(90, light, 3, List.of(wires(40, 20, false), wires(50, 0, false)), "Stay 9 m away", TRAFFIC, TRAFFIC,
                    WATER, WATER, POWER_LINE, POWER_LINE).cautions();
            assertEquals(all.stream().distinct().toList(), all);
            for (String key : List.of("stayOffCarriageway", "onePersonWithout")) {
                assertEquals(1, all.stream().filter(line -> line.contains(TEXTS.getProperty("cautions." + key).strip())).count(), all.toString());
            }
        }
    }

    private static Properties texts() {
        Properties texts = new Properties();
        try (InputStreamReader in = new InputStreamReader(Cautions.class.getResourceAsStream("messages.properties"), StandardCharsets.UTF_8)) {
            texts.load(in);
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
        return texts;
    }
}
