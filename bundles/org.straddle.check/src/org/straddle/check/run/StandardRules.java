package org.straddle.check.run;

import java.util.List;

import org.straddle.check.CheckRule;
import org.straddle.check.Rule;
import org.straddle.check.Severity;
import org.straddle.check.rules.bird.BirdIntermittent;
import org.straddle.check.rules.bird.BirdNeverWorked;
import org.straddle.check.rules.bird.BirdNotHeard;
import org.straddle.check.rules.bird.BirdNotWorking;
import org.straddle.check.rules.bird.BirdOff;
import org.straddle.check.rules.bird.BirdUnlit;
import org.straddle.check.rules.bird.BirdUnreported;
import org.straddle.check.rules.bird.CatalogueNumberTwice;
import org.straddle.check.rules.bird.DownlinkMissing;
import org.straddle.check.rules.bird.ElementsOfAnotherBird;
import org.straddle.check.rules.bird.ElementsTooOld;
import org.straddle.check.rules.event.CannotBeComputed;
import org.straddle.check.rules.event.EarthOrientationMissing;
import org.straddle.check.rules.event.EarthOrientationStale;
import org.straddle.check.rules.gear.AskedNotPacked;
import org.straddle.check.rules.gear.EnergyShort;
import org.straddle.check.rules.gear.KitCannotWork;
import org.straddle.check.rules.gear.KitEntryWrong;
import org.straddle.check.rules.gear.KitTooHeavy;
import org.straddle.check.rules.gear.KitWithoutSpare;
import org.straddle.check.rules.gear.SparesInRing;
import org.straddle.check.rules.gear.StockLentTwice;
import org.straddle.check.rules.people.BaseNotPlaced;
import org.straddle.check.rules.people.DayTimesWrong;
import org.straddle.check.rules.people.DayWithoutBase;
import org.straddle.check.rules.people.LicenceBand;
import org.straddle.check.rules.people.LicencePlace;
import org.straddle.check.rules.people.LoneOperator;
import org.straddle.check.rules.people.NightElsewhere;
import org.straddle.check.rules.people.OperatorInTwoTeams;
import org.straddle.check.rules.people.TeamNumberTwice;
import org.straddle.check.rules.people.TeamWithoutOperators;
import org.straddle.check.rules.plan.AnnouncementOutdated;
import org.straddle.check.rules.plan.BanBroken;
import org.straddle.check.rules.plan.BreakMissing;
import org.straddle.check.rules.plan.DownlinkNotAgreed;
import org.straddle.check.rules.plan.DriveNotDriven;
import org.straddle.check.rules.plan.DrivingLimit;
import org.straddle.check.rules.plan.DutyTooLong;
import org.straddle.check.rules.plan.DriveTooLong;
import org.straddle.check.rules.plan.MealMissing;
import org.straddle.check.rules.plan.OneChannel;
import org.straddle.check.rules.plan.PeakLow;
import org.straddle.check.rules.plan.PlanEmpty;
import org.straddle.check.rules.plan.ReliefMissing;
import org.straddle.check.rules.plan.RestTooShort;
import org.straddle.check.rules.plan.SameFrequency;
import org.straddle.check.rules.plan.SameSite;
import org.straddle.check.rules.plan.SameSquare;
import org.straddle.check.rules.plan.SquareTooOften;
import org.straddle.check.rules.plan.StopIncomplete;
import org.straddle.check.rules.plan.StopOutsideDay;
import org.straddle.check.rules.plan.StopShort;
import org.straddle.check.rules.plan.StopTimesWrong;
import org.straddle.check.rules.plan.StopsOverlap;
import org.straddle.check.rules.plan.TimeInHand;
import org.straddle.check.rules.plan.TurnAfterTakeDown;
import org.straddle.check.rules.plan.TurnBeforeSetUp;
import org.straddle.check.rules.plan.TurnBelowMask;
import org.straddle.check.rules.plan.TurnIncomplete;
import org.straddle.check.rules.plan.TurnMaySlip;
import org.straddle.check.rules.plan.TurnOutsideStop;
import org.straddle.check.rules.plan.TurnShort;
import org.straddle.check.rules.plan.TurnTimesWrong;
import org.straddle.check.rules.plan.TurnWithoutPass;
import org.straddle.check.rules.plan.TurnsTooClose;
import org.straddle.check.rules.plan.UplinkForeign;
import org.straddle.check.rules.site.BoundaryError;
import org.straddle.check.rules.site.HazardReview;
import org.straddle.check.rules.site.KindMismatch;
import org.straddle.check.rules.site.MastTooHigh;
import org.straddle.check.rules.site.PermissionLapsed;
import org.straddle.check.rules.site.PositionNotEntered;
import org.straddle.check.rules.site.SiteWithoutSquares;
import org.straddle.check.rules.site.SquareNamedWrong;
import org.straddle.check.rules.site.SquaresNotOccupied;
import org.straddle.check.rules.site.VisitExpired;
import org.straddle.check.rules.site.VisitMissing;
import org.straddle.check.rules.site.VisitOld;
import org.straddle.outlook.Trouble;
import org.straddle.safety.ReviewState;

/** Names every rule, in the order of a preparation: the event, sites, birds, people and kit, the plan. */
public final class StandardRules {

    private StandardRules() {
    }

    public static List<Rule> all() {
        return List.of(
                new CannotBeComputed(CheckRule.TIME_ZONE_UNKNOWN, Severity.WARNING,
                        Trouble.Kind.TIME_ZONE),
                new CannotBeComputed(CheckRule.DAYS_WRONG, Severity.WARNING, Trouble.Kind.DAYS),
                new CannotBeComputed(CheckRule.DEMAND_SQUARE_WRONG, Severity.WARNING,
                        Trouble.Kind.DEMAND_SQUARE),
                new CannotBeComputed(CheckRule.POSITION_WRONG, Severity.BLOCKER,
                        Trouble.Kind.POSITION),
                new PositionNotEntered(),
                new CannotBeComputed(CheckRule.HORIZON_POINT_WRONG, Severity.WARNING,
                        Trouble.Kind.HORIZON),
                new SquareNamedWrong(),
                new SiteWithoutSquares(),
                new SquaresNotOccupied(),
                new BoundaryError(),
                new KindMismatch(),
                new VisitMissing(),
                new VisitOld(),
                new VisitExpired(),
                new PermissionLapsed(),
                new HazardReview(CheckRule.REVIEW_MISSING, Severity.BLOCKER,
                        ReviewState.Missing.class::isInstance),
                new HazardReview(CheckRule.REVIEW_EXPIRED, Severity.BLOCKER,
                        ReviewState.Expired.class::isInstance),
                new HazardReview(CheckRule.REVIEW_OUTDATED, Severity.BLOCKER,
                        ReviewState.Outdated.class::isInstance),
                new HazardReview(CheckRule.REVIEW_FALLEN, Severity.BLOCKER,
                        ReviewState.Fallen.class::isInstance),
                new HazardReview(CheckRule.REVIEW_SIGNED_ONCE, Severity.BLOCKER,
                        ReviewState.SignedOnce.class::isInstance),
                new HazardReview(CheckRule.REVIEW_SIGNER_UNKNOWN, Severity.BLOCKER,
                        ReviewState.UnknownSigner.class::isInstance),
                new HazardReview(CheckRule.SITE_REFUSED, Severity.BLOCKER,
                        ReviewState.Refused.class::isInstance),
                new HazardReview(CheckRule.REVIEW_CONDITIONS, Severity.ADVICE,
                        state -> state instanceof ReviewState.Valid valid && !valid.conditions().isEmpty()),
                new MastTooHigh(),
                new CannotBeComputed(CheckRule.REGION_WRONG, Severity.WARNING, Trouble.Kind.REGION),
                new CannotBeComputed(CheckRule.JURISDICTION_WRONG, Severity.WARNING,
                        Trouble.Kind.JURISDICTION),
                new CannotBeComputed(CheckRule.ELEMENTS_MISSING, Severity.WARNING,
                        Trouble.Kind.ELEMENTS_MISSING),
                new CannotBeComputed(CheckRule.ELEMENTS_UNUSABLE, Severity.WARNING,
                        Trouble.Kind.ELEMENTS_UNUSABLE),
                new ElementsTooOld(),
                new ElementsOfAnotherBird(),
                new EarthOrientationMissing(),
                new EarthOrientationStale(),
                new CatalogueNumberTwice(),
                new BirdNotWorking(),
                new BirdIntermittent(),
                new BirdNeverWorked(),
                new BirdNotHeard(),
                new BirdUnreported(),
                new DownlinkMissing(),
                new BirdOff(),
                new BirdUnlit(),
                new TeamNumberTwice(),
                new TeamWithoutOperators(),
                new LoneOperator(),
                new OperatorInTwoTeams(),
                new LicenceBand(),
                new LicencePlace(),
                new SparesInRing(),
                new KitEntryWrong(),
                new StockLentTwice(),
                new KitCannotWork(),
                new KitWithoutSpare(),
                new AskedNotPacked(),
                new KitTooHeavy(),
                new EnergyShort(),
                new DayTimesWrong(),
                new DayWithoutBase(),
                new BaseNotPlaced(),
                new NightElsewhere(),
                new PlanEmpty(),
                new StopIncomplete(),
                new StopTimesWrong(),
                new TurnIncomplete(),
                new TurnTimesWrong(),
                new StopsOverlap(),
                new StopShort(),
                new StopOutsideDay(),
                new SameSite(),
                new SameSquare(),
                new SquareTooOften(),
                new BanBroken(),
                new DriveTooLong(),
                new DrivingLimit(),
                new BreakMissing(),
                new DutyTooLong(),
                new RestTooShort(),
                new MealMissing(),
                new ReliefMissing(),
                new TimeInHand(),
                new TurnMaySlip(),
                new DriveNotDriven(),
                new TurnOutsideStop(),
                new TurnBeforeSetUp(),
                new TurnAfterTakeDown(),
                new TurnWithoutPass(),
                new TurnBelowMask(),
                new TurnsTooClose(),
                new TurnShort(),
                new PeakLow(),
                new OneChannel(),
                new SameFrequency(),
                new DownlinkNotAgreed(),
                new UplinkForeign(),
                new AnnouncementOutdated());
    }
}
