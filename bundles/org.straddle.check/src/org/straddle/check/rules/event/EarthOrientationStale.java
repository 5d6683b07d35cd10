package org.straddle.check.rules.event;

import java.util.function.Consumer;

import org.straddle.check.CheckRule;
import org.straddle.check.Finding;
import org.straddle.check.Severity;
import org.straddle.check.Statement;
import org.straddle.check.rules.NamedRule;
import org.straddle.outlook.Outlook;

/** Somebody brought Earth orientation data, but not for the days of the event: the times do not rest on them. */
public final class EarthOrientationStale extends NamedRule {

    public EarthOrientationStale() {
        super(CheckRule.EARTH_ORIENTATION_STALE.id(), Severity.ADVICE);
    }

    @Override
    public void check(Outlook outlook, Consumer<Finding> findings) {
        if (outlook.hasSpan() && outlook.orientation().isLoaded()) {
            outlook.orientationNotice().ifPresent(notice -> findings.accept(Finding.of(this, Statement.words(notice), outlook.event())));
        }
    }
}
