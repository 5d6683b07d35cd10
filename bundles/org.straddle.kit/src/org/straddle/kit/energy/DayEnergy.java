package org.straddle.kit.energy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One day of a supply: what it has in the morning, what is drawn, and what is left.
 *
 * @param morningWh that may be counted on in the morning
 * @param drawnWh   what the day asks for, whether it is there or not
 * @param runsOut   by battery, the turn in which it is empty, in the order in which they are used; a battery that lasts is
 *                  not named
 * @param course    what is left after each spell of the day, in their order
 */
public record DayEnergy(String day, double morningWh, double drawnWh, Map<Battery, String> runsOut, List<Left> course) {

    /** @param wh what is left when the spell is over; less than 0 is what is missing by then */
    public record Left(Spell spell, double wh) {
    }

    public DayEnergy {
        course = List.copyOf(course);
        runsOut = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(runsOut));
    }

    /** What is left in the evening, Wh; less than 0 is what is missing. */
    public double marginWh() {
        return morningWh - drawnWh;
    }

    /**
     * @param batteries       in the order in which they are used, one after the other
     * @param temperatureDegC coldest on the way
     * @param most            part of what is printed that the event allows to count on, 0 to 1
     */
    public static List<DayEnergy> of(List<Battery> batteries, List<Device> devices, List<Day> days, double temperatureDegC,
            double most) {
        double turnW = devices.stream().mapToDouble(Device::turnW).sum();
        double idleW = devices.stream().mapToDouble(Device::idleW).sum();
        double[] full = batteries.stream().mapToDouble(battery -> battery.countedWh(temperatureDegC, most)).toArray();
        double[] left = full.clone();
        List<DayEnergy> energies = new ArrayList<>();
        for (Day day : days) {
            if (day.charged()) {
                left = full.clone();
            }
            double morning = java.util.Arrays.stream(left).sum();
            double drawn = 0;
            Map<Battery, String> runsOut = new LinkedHashMap<>();
            String last = "";
            List<Left> course = new ArrayList<>();
            for (Spell spell : day.spells()) {
                double wanted = (spell.isTurn() ? turnW : idleW) * spell.length().toMillis() / 3_600_000.0;
                last = spell.isTurn() ? spell.turn() : last;
                drawn += wanted;
                course.add(new Left(spell, morning - drawn));
                for (int i = 0; i < left.length; i++) {
                    double taken = Math.min(left[i], wanted);
                    boolean had = left[i] > 0;
                    left[i] -= taken;
                    wanted -= taken;
                    if (had && left[i] <= 0) {
                        runsOut.put(batteries.get(i), last);
                    }
                }
            }
            energies.add(new DayEnergy(day.name(), morning, drawn, runsOut, course));
        }
        return energies;
    }
}
