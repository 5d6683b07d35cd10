package org.straddle.worth;

import java.time.Duration;

import org.straddle.model.Figures;
import org.straddle.model.Policies;
import org.straddle.model.SitesTaken;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.WorkMode;

/**
 * The policies that say what a plan is worth, as they are to be used. Chances and shares are 0 to 1 here. All defaults are ours, but the
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

    /** @param chosen may be null: then every figure is the default */
    public static WorthFigures of(Policies chosen) {
        Figures figures = Figures.of(chosen);
        boolean allSites = chosen != null && chosen.getSitesTaken() == SitesTaken.ALL;
        return new WorthFigures(figures.value(Literals.POLICIES__CHASERS),
                figures.share(Literals.POLICIES__CALLERS_PERCENT),
                figures.value(Literals.POLICIES__FM_CONTACTS_PER_MINUTE),
                figures.value(Literals.POLICIES__LINEAR_CONTACTS_PER_MINUTE),
                figures.value(Literals.POLICIES__DATA_CONTACTS_PER_MINUTE),
                new QualityRamp(figures.share(Literals.POLICIES__LOW_MINUTE_PERCENT), figures.value(Literals.POLICIES__FULL_VIEW_DEG)),
                figures.share(Literals.POLICIES__BIRD_WORKED_LATELY_PERCENT),
                figures.days(Literals.POLICIES__WORKED_LATELY_DAYS),
                figures.share(Literals.POLICIES__BIRD_WORKING_PERCENT),
                figures.share(Literals.POLICIES__BIRD_INTERMITTENT_PERCENT),
                figures.share(Literals.POLICIES__BIRD_HEARD_ONLY_PERCENT),
                figures.share(Literals.POLICIES__BIRD_UNKNOWN_PERCENT),
                figures.share(Literals.POLICIES__BIRD_NOT_HEARD_PERCENT),
                figures.share(Literals.POLICIES__TURN_HAPPENS_PERCENT),
                allSites ? 1 : figures.share(Literals.POLICIES__UNREADY_SITE_PERCENT),
                figures.share(Literals.POLICIES__SUREST_CONTACT_PERCENT),
                figures.share(Literals.POLICIES__TOO_OFTEN_PERCENT));
    }

    /** Most contacts in a minute of full quality. */
    public double contactsPerMinute(WorkMode mode) {
        return switch (mode) {
            case FM -> fmPerMinute;
            case LINEAR -> linearPerMinute;
            case DATA -> dataPerMinute;
        };
    }
}
