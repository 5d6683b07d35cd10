package org.straddle.daysheet.sheet;

import java.util.ArrayList;
import java.util.List;

import org.straddle.grid.GeoPosition;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Place;
import org.straddle.sky.Window;
import org.straddle.sky.Windows;
import org.straddle.sky.prediction.Sun;

/** A stretch of day, twilight or darkness. */
public record Light(State state, Window window) {

    /** Twilight is civil twilight: the sun is down, but less than 6° below the horizon. */
    public enum State {
        DAY, TWILIGHT, DARK
    }

    /** The whole window in stretches, in time order within each state. */
    static List<Light> of(Outlook outlook, GeoPosition position, Window window) {
        List<Window> day = outlook.daylight(position, window);
        List<Window> bright = Sun.daylight(Place.of(position.latitudeDeg(), position.longitudeDeg()), window,
                Sun.CIVIL_TWILIGHT_DEG);
        List<Light> light = new ArrayList<>();
        day.forEach(w -> light.add(new Light(State.DAY, w)));
        Windows.common(bright, rest(day, window)).forEach(w -> light.add(new Light(State.TWILIGHT, w)));
        rest(bright, window).forEach(w -> light.add(new Light(State.DARK, w)));
        return light;
    }

    /** What the windows, which are in order and apart, leave of the whole. */
    private static List<Window> rest(List<Window> windows, Window whole) {
        return Windows.without(List.of(whole), windows);
    }
}
