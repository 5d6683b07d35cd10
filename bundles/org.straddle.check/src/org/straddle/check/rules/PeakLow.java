package org.straddle.check.rules;

import java.util.Locale;
import java.util.function.Consumer;

import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.outlook.Outlook;

/** The policy names the least peak of a pass. */
final class PeakLow extends NamedRule {

    PeakLow() {
        super("peak-low", Severity.ADVICE, "Passes rise high enough to be worth it");
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        Words words = new Words(outlook.zone());
        double leastDeg = outlook.policies().minimumPeakElevationDeg();
        for (Work work : Itinerary.of(outlook.event()).turns()) {
            TurnPass.best(outlook, work).filter(pass -> pass.peakElevationDeg() < leastDeg).ifPresent(pass ->
                    findings.accept(Finding.of(this, Words.sentence(Words.name(work.bird())) + " rises to "
                            + degrees(Math.floor(pass.peakElevationDeg() * 10) / 10) + " over "
                            + Words.name(work.site()) + ", " + words.during(work.window())
                            + "; this event plans passes of " + degrees(leastDeg) + " or more.",
                            work.turn()).at(work.window().start())));
        }
    }

    private static String degrees(double angleDeg) {
        return String.format(Locale.ENGLISH, "%.1f°", angleDeg);
    }
}
