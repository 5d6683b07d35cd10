package org.straddle.daysheet.fits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.straddle.model.Bird;
import org.straddle.model.Fresh;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.sky.Window;

/** What more could be worked during a stop, beside what is planned: parts of passes in which nothing would be wrong. */
public final class Openings {

    /**
     * A chance for a turn.
     *
     * @param window the part of the pass that is free, whole seconds
     */
    public record Opening(SitePass pass, Window window) {
    }

    private Openings() {
    }

    /** By time; none for a stop that lacks its team, site or times. */
    public static List<Opening> of(Outlook outlook, Stop stop) {
        Itinerary plan = Itinerary.of(outlook.event());
        return plan.stays().stream().filter(stay -> stay.stop() == stop).findFirst()
                .map(stay -> of(outlook, plan, stay)).orElse(List.of());
    }

    /** The same for a stay that may be in no plan yet. */
    static List<Opening> of(Outlook outlook, Itinerary plan, Stay stay) {
        List<Opening> openings = new ArrayList<>();
        outlook.event().getBirds().forEach(bird -> openings.addAll(of(outlook, plan, stay, bird)));
        openings.sort(Comparator.comparing(Opening::window, Window.IN_TIME_ORDER));
        return List.copyOf(openings);
    }

    private static List<Opening> of(Outlook outlook, Itinerary plan, Stay stay, Bird bird) {
        Turn none = Fresh.turn();
        none.setBird(bird);
        return new TurnTrial(outlook, plan, none).free(stay).stream().flatMap(window -> outlook
                .passes(stay.site(), bird).stream().filter(pass -> pass.pass().window().overlaps(window)).limit(1)
                .map(pass -> new Opening(pass, window))).toList();
    }
}
