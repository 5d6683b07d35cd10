package org.straddle.daysheet.fits;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.sky.Window;

/**
 * A stop or turn in somebody's hand, or one end of it: where it may go, and what would come of letting go. Nothing is
 * changed by carrying. All times are those of the end that is held, or of the start when the whole is.
 */
public sealed interface Carried permits CarriedStop, CarriedTurn {

    /** Empty for what lacks a site, a bird or usable times: nobody can say where that may go. */
    static Optional<Carried> stop(Outlook outlook, Stop stop, Grip grip) {
        return stop.getSite() == null ? Optional.empty() : Itinerary.window(stop.getArrival(), stop.getDeparture())
                .map(window -> new CarriedStop(outlook, stop, window, grip));
    }

    /** Empty for what lacks a bird or usable times, or whose stop lacks a team, a site or usable times. */
    static Optional<Carried> turn(Outlook outlook, Turn turn, Grip grip) {
        Itinerary plan = Itinerary.of(outlook.event());
        return plan.turns().stream().filter(work -> work.turn() == turn).findFirst()
                .map(work -> new CarriedTurn(outlook, plan, work, grip));
    }

    Grip grip();

    /** Where it is now. */
    Window window();

    /** All places that fit, by team and time. May take some tens of milliseconds: ask for them off the UI thread. */
    List<FittingPlace> everywhere(IProgressMonitor monitor);

    /** Those in one lane. */
    List<FittingPlace> places(Team team);

    /**
     * What would come of letting go; quick enough to be asked with every move of the hand.
     *
     * @param team   whose lane it is over
     * @param wanted where it is held
     * @param places that are known by now, to snap to
     * @param reach  how near it must come to a place to snap to it; zero to snap to nothing
     */
    Landing land(Team team, Instant wanted, List<FittingPlace> places, Duration reach);

    /** The same without snapping. */
    default Landing land(Team team, Instant wanted) {
        return land(team, wanted, List.of(), Duration.ZERO);
    }

    /** The window with the held end, or the whole, at an instant; an end stops a minute before the other. */
    static Window held(Window window, Grip grip, Instant at) {
        Duration least = Duration.ofMinutes(1);
        return switch (grip) {
            case WHOLE -> Window.of(at, window.duration());
            case START -> new Window(earlier(at, window.end().minus(least)), window.end());
            case END -> new Window(window.start(), later(at, window.start().plus(least)));
        };
    }

    private static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }
}
