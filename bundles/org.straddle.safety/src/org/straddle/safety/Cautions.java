package org.straddle.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.Visit;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * The usual cautions for each kind of hazard, few enough to be read. Figures come from the named calculators of this
 * package; sentences without a source are common practice.
 */
public final class Cautions {

    private static final Catalogue TEXTS = Catalogue.of(Cautions.class);

    private static final Pattern LENGTH = Pattern.compile("\\d\\s*(m|ft|metres|meters|feet)\\b");

    private Cautions() {
    }

    /** For one hazard as a visit saw it; overhead wires have a note of their own. */
    static List<String> of(Hazard hazard, Visit visit, Occasion occasion) {
        return hazard.getKind() == HazardKind.TRAFFIC ? traffic(visit.getRoadSpeedKmh(), occasion.light(), occasion.countryClass())
                : of(hazard.getKind());
    }

    /**
     * For the wires of a visit.
     *
     * @param measures what the visit says the team does about them
     */
    static List<String> wires(List<WireSighting> seen, Optional<MastLimit> limit, String measures) {
        List<String> all = new ArrayList<>();
        limit.map(MastLimit::sentence).ifPresent(all::add);
        if (LENGTH.matcher(measures).find()) {
            all.add(TEXTS.text("cautions.otherFigure"));
        }
        all.add(TEXTS.text("cautions.lookUpBefore"));
        if (seen.stream().anyMatch(wires -> wires.voltage().source() != WireVoltage.Source.OWNER)) {
            all.add(TEXTS.text("cautions.onlyOwnerWires"));
        }
        return all;
    }

    /** For a kind of hazard, when nothing more is known of it. */
    public static List<String> of(HazardKind kind) {
        return switch (kind) {
            case TRAFFIC -> traffic(0, Light.UNKNOWN, 0);
            case POWER_LINE -> List.of(
                    TEXTS.text("cautions.everythingUprightStays", "metresUp", metresUp(WireVoltage.unknown())),
                    TEXTS.text("cautions.mastsVehiclesAntennas"),
                    TEXTS.text("cautions.lookUpWet"));
            case LIGHTNING -> List.of(
                    TEXTS.text("cautions.anyThunderStop"),
                    TEXTS.text("cautions.stayThereLeast", "wait", Lightning.WAIT.toMinutes()),
                    TEXTS.text("cautions.mastsComeDown"));
            case HEAT -> List.of(
                    TEXTS.text("cautions.confusionCollapseHot"),
                    TEXTS.text("cautions.drink"),
                    TEXTS.text("cautions.workShadeTake"));
            case COLD -> List.of(
                    TEXTS.text("cautions.confusionFumblingHands"),
                    TEXTS.text("cautions.knowWindChill"),
                    TEXTS.text("cautions.snowKeepEngine"));
            case FOOTING -> List.of(
                    TEXTS.text("cautions.walkWayOnce"),
                    TEXTS.text("cautions.markGuysCables"));
            case WATER -> List.of(
                    TEXTS.text("cautions.askTideSurf"),
                    TEXTS.text("cautions.nobodyGoesNear"));
            case ANIMALS -> List.of(
                    TEXTS.text("cautions.staySoFar"),
                    TEXTS.text("cautions.askOwnerWarden"));
            case RADIO_FIELD -> List.of(
                    TEXTS.text("cautions.keepPeopleOut"),
                    TEXTS.text("cautions.nearTransmitterSomebody"));
            case REMOTENESS -> List.of(
                    TEXTS.text("cautions.leaveRouteTime"),
                    TEXTS.text("cautions.knowWherePhone"),
                    TEXTS.text("cautions.nobodyWorksThere"));
            case OTHER -> List.of(TEXTS.text("cautions.agreeWhatDo"));
        };
    }

    private static String metresUp(WireVoltage voltage) {
        return FigureText.inCurrent().atMost(1, Math.ceil(voltage.approachM().orElseThrow() * 10) / 10);
    }

    /** Beside a road; with a speed of 0 or less the speed is not known. */
    static List<String> traffic(double speedKmh, Light light, int countryClass) {
        boolean known = speedKmh > 0 && Double.isFinite(speedKmh);
        HighVisibility clothing = HighVisibility.at(known ? speedKmh : Double.NaN, light, countryClass);
        return List.of(
                TEXTS.text("cautions.stayOffCarriageway"),
                TEXTS.text("cautions.onePersonWithout"),
                known ? TEXTS.text("cautions.stoppingDistance", "speedKmh", FigureText.inCurrent().atMost(1, speedKmh),
                        "roundedUp", StoppingSight.roundedUp(StoppingSight.metres(speedKmh)),
                        "clothing", clothing.number(), "why", why(speedKmh, light, countryClass))
                        : TEXTS.text("cautions.visitDoesNot", "clothing", clothing.number()));
    }

    private static String why(double speedKmh, Light light, int countryClass) {
        if (HighVisibility.at(speedKmh, Light.DAY) == HighVisibility.CLASS_3) {
            return "";
        }
        if (!light.asksForMore()) {
            return HighVisibility.at(speedKmh, light, countryClass) == HighVisibility.CLASS_3 ? TEXTS.text("cautions.countryAsks") : "";
        }
        return light == Light.POOR ? TEXTS.text("cautions.poorLight") : TEXTS.text("cautions.classFullDaylight");
    }
}
