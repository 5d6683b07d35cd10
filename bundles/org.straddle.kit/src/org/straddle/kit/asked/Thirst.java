package org.straddle.kit.asked;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.model.Event;
import org.straddle.model.Forecast;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Drives;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.TeamDays;
import org.straddle.safety.HeatIndex;
import org.straddle.safety.HeatLevel;

/**
 * Drinking water for one day out.
 *
 * <p>In heat one litre an hour for each person: 8 oz each 15 to 20 min are 0.7 to 0.95 l (NIOSH 2017-126). Else 0.3 l an
 * hour (common practice, no source). Where a forecast names no humidity, 27 °C (80 °F) counts as heat.
 *
 * @param day    day on which the team sets out
 * @param out    between leaving and being back, or all stops where the day has no times
 * @param heat   the warmest forecast of the day was heat; empty where there is no forecast
 */
record Thirst(LocalDate day, Duration out, Optional<Boolean> heat) {

    static final double IN_HEAT_L_PER_HOUR = 1;
    static final double ELSE_L_PER_HOUR = 0.3;

    private static final double HEAT_DEG_C = 27;

    /** The day that asks for most; empty for a team without stops. */
    static Optional<Thirst> worst(List<Stay> stays, Outlook outlook) {
        Map<LocalDate, Thirst> days = new HashMap<>();
        for (Stay stay : stays) {
            Optional<TeamDay> out = Drives.dayOf(stay);
            LocalDate day = out.map(TeamDay::getFrom).orElse(stay.window().start()).atZone(outlook.zone()).toLocalDate();
            Duration whole = out.flatMap(TeamDays::window).map(window -> window.duration()).orElse(Duration.ZERO);
            Optional<Boolean> heat = heat(stay, outlook);
            days.merge(day, new Thirst(day, whole.isZero() ? stay.window().duration() : whole, heat), (one, other) -> new Thirst(day,
                    whole.isZero() ? one.out.plus(other.out) : whole,
                    one.heat.isEmpty() ? other.heat : Optional.of(one.heat.get() || other.heat.orElse(false))));
        }
        return days.values().stream().max(Comparator.comparingDouble(Thirst::litresEach).thenComparing(Thirst::day));
    }

    private static Optional<Boolean> heat(Stay stay, Outlook outlook) {
        LocalDate day = stay.window().start().atZone(outlook.zone()).toLocalDate();
        Event event = outlook.event();
        return event.getForecasts().stream().filter(forecast -> day.equals(forecast.getDay()) && forecast.getWarmestDegC() != null)
                .filter(forecast -> forecast.getSite() == null || forecast.getSite() == stay.site()).map(Thirst::isHot)
                .reduce(Boolean::logicalOr);
    }

    private static boolean isHot(Forecast forecast) {
        double warmest = forecast.getWarmestDegC();
        Double humidity = forecast.getHumidityPercent();
        return humidity == null || !(humidity >= 0 && humidity <= 100) || !Double.isFinite(warmest) ? !(warmest < HEAT_DEG_C)
                : HeatLevel.ofCelsius(HeatIndex.celsius(warmest, humidity)) != HeatLevel.NONE;
    }

    double litresEach() {
        return out.toMinutes() / 60.0 * (heat.orElse(false) ? IN_HEAT_L_PER_HOUR : ELSE_L_PER_HOUR);
    }
}
