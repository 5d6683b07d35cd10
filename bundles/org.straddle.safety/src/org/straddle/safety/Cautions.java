package org.straddle.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.Survey;

/**
 * The usual cautions for each kind of hazard. Figures come from the named calculators of this package; sentences
 * without a figure are common practice, no source.
 */
public final class Cautions {

    private static final double FT_10_M = 10 * OverheadLine.M_PER_FT;

    private Cautions() {
    }

    /** For one hazard as a survey saw it. */
    static List<String> of(Hazard hazard, Survey survey) {
        return switch (hazard.getKind()) {
            case TRAFFIC -> traffic(survey.getRoadSpeedKmh());
            case POWER_LINE -> isKnown(hazard.getDistanceM()) ? powerLine(hazard.getDistanceM()) : of(HazardKind.POWER_LINE);
            default -> of(hazard.getKind());
        };
    }

    /** For a line overhead as a survey measured it. */
    static List<String> of(org.straddle.model.OverheadLine line) {
        List<String> all = new ArrayList<>(isKnown(line.getDistanceM()) ? powerLine(line.getDistanceM()) : of(HazardKind.POWER_LINE));
        if (isKnown(line.getVoltageKv())) {
            OptionalDouble feet = OverheadLine.approachFt(line.getVoltageKv());
            all.add(feet.isEmpty() ? "Above 1000 kV the owner of the line says how near anything may come (29 CFR 1926.1408 table A)."
                    : "At " + Words.number(line.getVoltageKv()) + " kV nothing comes within "
                            + Words.number(Math.ceil(feet.getAsDouble() * OverheadLine.M_PER_FT * 10) / 10) + " m ("
                            + Words.number(feet.getAsDouble()) + " ft, 29 CFR 1926.1408 table A); the owner may ask for more.");
        }
        if (!isKnown(line.getHeightM())) {
            all.add("Nobody has estimated how high the wire hangs: wires sag in heat and under ice, and the height says nothing"
                    + " of how far to stay away.");
        }
        return all;
    }

    /** A survey leaves at 0 what nobody measured, and a file may hold anything. */
    private static boolean isKnown(double measured) {
        return measured > 0 && Double.isFinite(measured);
    }

    /** For a kind of hazard, when nothing more is known of it. */
    public static List<String> of(HazardKind kind) {
        return switch (kind) {
            case TRAFFIC -> traffic(0);
            case POWER_LINE -> List.of(
                    "Stand at least one and a half times the height of mast and antenna away from the line, measured"
                            + " along the ground (US CPSC).",
                    "No part comes within " + Words.number(FT_10_M) + " m (10 ft) of a line, more above 50 kV (29 CFR"
                            + " 1926.1408 table A); ask the owner of the line for the voltage and the local distance.",
                    "Look up before you raise, carry or turn anything; wet ropes and poles conduct.");
            case LIGHTNING -> List.of(
                    "Thunder within " + Lightning.SHELTER_WITHIN.toSeconds() + " s of the flash: stop, leave the antenna,"
                            + " go into a building or a closed car (NOAA/NWS).",
                    "Wait at least " + Lightning.WAIT.toMinutes() + " min after the last thunder (NOAA/NWS).",
                    "A pass is never a reason to stay: drop the turn.");
            case HEAT -> List.of(
                    "Drink 0.25 l (8 oz) every 15 to 20 min, not more than 1.4 l (48 oz) in an hour (NIOSH 2017-126).",
                    "Work in the shade and take turns; know the heat index of the day.",
                    "Confusion, no more sweat, or fainting is an emergency: call for help, cool the person.");
            case COLD -> List.of(
                    "Know the wind chill of the day; change places before hands are numb.",
                    "Keep the engine off in snow unless the exhaust is clear, and air the car.",
                    "Shivering that stops, or slurred speech, is an emergency: warm the person and call for help.");
            case FOOTING -> List.of(
                    "Walk the way once by daylight without load; wear boots.",
                    "Mark guys, cables and edges before dark.");
            case WATER -> List.of(
                    "Ask for tide, surf, flood and dam releases of the day, and set a time to be gone.",
                    "Nobody goes near the edge alone.");
            case ANIMALS -> List.of(
                    "Ask the owner about grazing animals and dogs; leave gates as you found them.",
                    "Keep away from nests and young; check for ticks in the evening.");
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

    /** With the distance between the mark and the line. */
    private static List<String> powerLine(double distanceM) {
        double heightM = Math.floor(OverheadLine.highestAntennaM(distanceM) * 10) / 10;
        String here = heightM > 0
                ? "At " + Words.number(distanceM) + " m from the line that means mast and antenna together no higher than "
                        + Words.number(heightM) + " m."
                : "At " + Words.number(distanceM) + " m from the line raise nothing at all: move the station.";
        return Stream.concat(of(HazardKind.POWER_LINE).stream(), Stream.of(here)).toList();
    }

    /** Beside a road; with a speed of 0 or less the speed is not known. */
    static List<String> traffic(double speedKmh) {
        String clear = "Park and set up clear of the road, never on the carriageway or where a driver does not expect"
                + " people; the local road authority's rules apply.";
        if (!isKnown(speedKmh)) {
            return List.of(clear, "The survey does not say how fast traffic is: wear high-visibility clothing of class "
                    + HighVisibility.CLASS_3.number() + " (ISO 20471) until somebody has looked.");
        }
        return List.of(clear,
                "At " + Words.number(speedKmh) + " km/h a driver needs about "
                        + StoppingSight.roundedUp(StoppingSight.metres(speedKmh))
                        + " m to stop on a level wet road (AASHTO): stand where you are seen from farther away.",
                "Wear high-visibility clothing of class " + HighVisibility.atKmh(speedKmh).number() + " or higher at this"
                        + " speed (ISO 20471).");
    }
}
