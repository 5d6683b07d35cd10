package org.straddle.worth;

import java.time.Duration;

import org.straddle.model.Policies;
import org.straddle.model.SitesTaken;
import org.straddle.model.StraddleFactory;
import org.straddle.model.WorkMode;

/**
 * The policies that say what a plan is worth, as they are to be used. A figure that is missing, negative, no number or
 * out of its range is replaced by the model's default. Chances and shares are 0 to 1 here. All defaults are ours, but the
 * contacts a minute, which are common practice without a source.
 *
 * @param chasers         how many follow the event
 * @param callers         part of those in reach who need a square that turns up and calls
 * @param fmPerMinute     most contacts a station makes in a minute of full quality by FM voice
 * @param linearPerMinute the same through a linear bird
 * @param dataPerMinute   the same by data
 * @param quality         what a minute counts by elevation
 * @param workedLately    chance that a bird works through which somebody made a contact lately
 * @param lately          how long ago that may be
 * @param working         chance that a bird works that is written down as working
 * @param intermittent    the same for one that works now and then
 * @param heardOnly       the same for one that was heard, but never worked
 * @param unknown         the same for one of which nobody knows
 * @param notHeard        the same for one that was not heard at the last try
 * @param happens         chance that a planned turn happens
 * @param unready         chance that a site can be used that lacks something; 1 when the event plans with all sites, as if
 *                        everything were settled in time
 * @param surest          no turn serves anybody more surely
 * @param tooOften        a square is worked too often when earlier turns serve more than this part of those whom a turn
 *                        could serve
 */
public record WorthFigures(double chasers, double callers, double fmPerMinute, double linearPerMinute,
        double dataPerMinute, QualityRamp quality, double workedLately, Duration lately, double working,
        double intermittent, double heardOnly, double unknown, double notHeard, double happens, double unready,
        double surest, double tooOften) {

    /** An amount −ln(1 − p) must stay a number. */
    private static final double MOST = 0.999;

    /** @param chosen may be null: then every figure is the default */
    public static WorthFigures of(Policies chosen) {
        Policies usual = StraddleFactory.eINSTANCE.createPolicies();
        Policies p = chosen == null ? usual : chosen;
        return new WorthFigures(above0(p.getChasers(), usual.getChasers()),
                share(p.getCallersPercent(), usual.getCallersPercent()),
                above0(p.getFmContactsPerMinute(), usual.getFmContactsPerMinute()),
                above0(p.getLinearContactsPerMinute(), usual.getLinearContactsPerMinute()),
                above0(p.getDataContactsPerMinute(), usual.getDataContactsPerMinute()),
                new QualityRamp(share(p.getLowMinutePercent(), usual.getLowMinutePercent()),
                        p.getFullViewDeg() > 0 && p.getFullViewDeg() <= 90 ? p.getFullViewDeg() : usual.getFullViewDeg()),
                share(p.getBirdWorkedLatelyPercent(), usual.getBirdWorkedLatelyPercent()),
                Duration.ofMinutes(Math.round(24 * 60 * Math.min(36_600, above0(p.getWorkedLatelyDays(), usual.getWorkedLatelyDays())))),
                share(p.getBirdWorkingPercent(), usual.getBirdWorkingPercent()),
                share(p.getBirdIntermittentPercent(), usual.getBirdIntermittentPercent()),
                share(p.getBirdHeardOnlyPercent(), usual.getBirdHeardOnlyPercent()),
                share(p.getBirdUnknownPercent(), usual.getBirdUnknownPercent()),
                share(p.getBirdNotHeardPercent(), usual.getBirdNotHeardPercent()),
                share(p.getTurnHappensPercent(), usual.getTurnHappensPercent()),
                p.getSitesTaken() == SitesTaken.ALL ? 1 : share(p.getUnreadySitePercent(), usual.getUnreadySitePercent()),
                Math.min(MOST, share(p.getSurestContactPercent(), usual.getSurestContactPercent())),
                share(p.getTooOftenPercent(), usual.getTooOftenPercent()));
    }

    /** Most contacts in a minute of full quality. */
    public double contactsPerMinute(WorkMode mode) {
        return switch (mode) {
            case FM -> fmPerMinute;
            case LINEAR -> linearPerMinute;
            case DATA -> dataPerMinute;
        };
    }

    private static double above0(double value, double otherwise) {
        return value > 0 && Double.isFinite(value) ? value : otherwise;
    }

    private static double share(double percent, double otherwise) {
        return (percent >= 0 && percent <= 100 ? percent : otherwise) / 100;
    }
}
