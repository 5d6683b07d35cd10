package org.straddle.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.Survey;

/**
 * The usual cautions for each kind of hazard, few enough to be read. Figures come from the named calculators of this
 * package; sentences without a source are common practice.
 */
public final class Cautions {

    private static final Pattern LENGTH = Pattern.compile("\\d\\s*(m|ft|metres|meters|feet)\\b");

    private Cautions() {
    }

    /** For one hazard as a visit saw it; overhead wires have a note of their own. */
    static List<String> of(Hazard hazard, Survey visit, Occasion occasion) {
        return hazard.getKind() == HazardKind.TRAFFIC ? traffic(visit.getRoadSpeedKmh(), occasion.light())
                : of(hazard.getKind());
    }

    /**
     * For the wires of a visit.
     *
     * @param measures what the surveyor says the team does about them
     */
    static List<String> wires(List<WireSighting> seen, Optional<MastLimit> limit, String measures) {
        List<String> all = new ArrayList<>();
        limit.map(MastLimit::sentence).ifPresent(all::add);
        if (LENGTH.matcher(measures).find()) {
            all.add("Where the surveyor's words name another figure, the more careful one counts.");
        }
        all.add("Look up before you raise, carry or turn anything; carry antennas and poles level, and park no nearer to the"
                + " wires than the mark. Wet ropes and poles conduct.");
        if (seen.stream().anyMatch(wires -> wires.voltage().source() != WireVoltage.Source.OWNER)) {
            all.add("Only the owner of the wires knows their voltage and the local distance: ask.");
        }
        return all;
    }

    /** For a kind of hazard, when nothing more is known of it. */
    public static List<String> of(HazardKind kind) {
        return switch (kind) {
            case TRAFFIC -> traffic(0, Light.UNKNOWN);
            case POWER_LINE -> List.of(
                    "Everything upright stays at least one and a half times its height away from the wires (US CPSC), and so"
                            + " far that no part comes within " + metresUp(WireVoltage.unknown()) + " m (50 ft) when it falls;"
                            + " less only for a voltage that the owner named (29 CFR 1926.1408 and 1409).",
                    "Masts on vehicles and antennas that somebody carries count.",
                    "Look up before you raise, carry or turn anything; wet ropes and poles conduct.");
            case LIGHTNING -> List.of(
                    "Any thunder: stop, leave masts and antennas as they are, and go into a substantial building or a closed"
                            + " metal car, windows up, hands off radio, microphone and coax (US National Weather Service).",
                    "Stay there for at least " + Lightning.WAIT.toMinutes() + " min after the last thunder. A pass is never"
                            + " a reason to go out sooner: drop the turn.",
                    "Masts come down beforehand, on the forecast: nobody touches one once it thunders.");
            case HEAT -> List.of(
                    "Confusion, collapse, or hot skin, dry or damp, means heat stroke: call for help and cool the person at"
                            + " once; give nothing to drink to somebody who is not fully awake (US CDC).",
                    "Drink 0.25 l (8 oz) every 15 to 20 min, not more than 1.4 l (48 oz) in an hour (NIOSH 2017-126).",
                    "Work in the shade and take turns; know the heat index of the day.");
            case COLD -> List.of(
                    "Confusion, fumbling hands, slurred speech or drowsiness, with or without shivering, is an emergency: call"
                            + " for help and warm the person (US CDC, from memory).",
                    "Know the wind chill of the day; change places before hands are numb.",
                    "In snow keep the engine off unless the exhaust is clear, and air the car.");
            case FOOTING -> List.of(
                    "Walk the way once by daylight without load; wear boots.",
                    "Mark guys, cables and edges before dark.");
            case WATER -> List.of(
                    "Ask for tide, surf, flood and dam releases of the day, and set a time to be gone.",
                    "Nobody goes near the edge alone or without a life vest.");
            case ANIMALS -> List.of(
                    "Stay so far from nests, young and herds that they take no notice; turn back when one shows alarm.",
                    "Ask the owner or warden about animals and distances; leave gates as you found them.");
            case RADIO_FIELD -> List.of(
                    "Keep people out of the beam and away from antennas that transmit; the distance follows from power,"
                            + " gain and band (47 CFR 1.1310, local law first).",
                    "Near a transmitter of somebody else keep to its owner's signs and fences.");
            case REMOTENESS -> List.of(
                    "Leave the route and a time to call with somebody at home; agree on what they do if no call comes.",
                    "Know where a phone works and where the next hospital is; carry first aid, water and warm clothes.",
                    "Nobody works there alone.");
            case OTHER -> List.of("Agree on what to do about it before anybody sets up.");
        };
    }

    private static String metresUp(WireVoltage voltage) {
        return Words.number(Math.ceil(voltage.approachM().orElseThrow() * 10) / 10);
    }

    /** Beside a road; with a speed of 0 or less the speed is not known. */
    static List<String> traffic(double speedKmh, Light light) {
        boolean known = speedKmh > 0 && Double.isFinite(speedKmh);
        HighVisibility clothing = HighVisibility.at(known ? speedKmh : Double.NaN, light);
        return List.of(
                "Stay off the carriageway, with the car on the side away from traffic; the road authority's rules come first.",
                "One person without headphones does nothing but watch the traffic while others work; everybody knows where to"
                        + " step.",
                known ? "At " + Words.number(speedKmh) + " km/h a driver needs about "
                        + StoppingSight.roundedUp(StoppingSight.metres(speedKmh)) + " m to stop on a level wet road (AASHTO):"
                        + " stand where you are seen from farther away. Wear high-visibility clothing of class "
                        + clothing.number() + " (ISO 20471" + why(speedKmh, light) + ")."
                        : "The visit does not say how fast traffic is: wear high-visibility clothing of class "
                                + clothing.number() + " (ISO 20471) until somebody has looked.");
    }

    private static String why(double speedKmh, Light light) {
        if (HighVisibility.at(speedKmh, Light.DAY) == HighVisibility.CLASS_3 || !light.asksForMore()) {
            return "";
        }
        return light == Light.POOR ? "; poor light" : "; class 2 by full daylight";
    }
}
