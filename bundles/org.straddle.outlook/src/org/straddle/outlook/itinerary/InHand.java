package org.straddle.outlook.itinerary;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.PolicyFigures;

/** Time in hand of a stop: from when the station can work until its first turn begins. */
public final class InHand {

    private InHand() {
    }

    /** Negative when the first turn begins during set-up; empty without turns. */
    public static Optional<Duration> of(Stay stay, PolicyFigures policies) {
        return stay.turns().stream().map(work -> work.window().start()).min(Instant::compareTo)
                .map(first -> Duration.between(StationUp.of(policies).ready(stay.window()), first));
    }

    /** How much the event's policy asks for beyond what there is; zero where there is enough, or no turn. */
    public static Duration lacking(Stay stay, PolicyFigures policies, HoldFigures figures) {
        Duration lacking = of(stay, policies).map(figures.inHand()::minus).orElse(Duration.ZERO);
        return lacking.isNegative() ? Duration.ZERO : lacking;
    }
}
