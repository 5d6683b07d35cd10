package org.straddle.check.rules;

import java.util.List;

import org.straddle.check.Rule;
import org.straddle.check.Severity;
import org.straddle.outlook.Trouble;
import org.straddle.safety.ReviewState;

/** Names every rule, in the order of a preparation: the event, sites, birds, people and kit, the plan. */
public final class StandardRules {

    private StandardRules() {
    }

    public static List<Rule> all() {
        return List.of(
                new CannotBeComputed("time-zone-unknown", Severity.WARNING, "The time zone is known",
                        Trouble.Kind.TIME_ZONE),
                new CannotBeComputed("days-wrong", Severity.WARNING, "The event says when it is", Trouble.Kind.DAYS),
                new CannotBeComputed("demand-square-wrong", Severity.WARNING, "Demand names squares",
                        Trouble.Kind.DEMAND_SQUARE),
                new CannotBeComputed("position-wrong", Severity.BLOCKER, "Positions lie on the Earth",
                        Trouble.Kind.POSITION),
                new PositionNotEntered(),
                new CannotBeComputed("horizon-point-wrong", Severity.WARNING, "Horizon points lie in the sky",
                        Trouble.Kind.HORIZON),
                new SquareNamedWrong(),
                new SiteWithoutSquares(),
                new SquaresNotOccupied(),
                new KindMismatch(),
                new SurveyMissing(),
                new SurveyOld(),
                new SurveyExpired(),
                new PermissionLapsed(),
                new HazardReview("review-missing", Severity.WARNING, "Hazards of used sites were reviewed",
                        ReviewState.Missing.class::isInstance),
                new HazardReview("review-expired", Severity.WARNING, "Reviews of used sites still hold",
                        ReviewState.Expired.class::isInstance),
                new HazardReview("review-outdated", Severity.WARNING, "Reviews rest on the newest survey",
                        ReviewState.Outdated.class::isInstance),
                new HazardReview("site-refused", Severity.BLOCKER, "No refused site is used",
                        ReviewState.Refused.class::isInstance),
                new HazardReview("review-conditions", Severity.ADVICE, "Conditions of reviews are known",
                        state -> state instanceof ReviewState.Valid valid && !valid.conditions().isEmpty()),
                new CannotBeComputed("region-wrong", Severity.WARNING, "Regions have an area", Trouble.Kind.REGION),
                new CannotBeComputed("jurisdiction-wrong", Severity.WARNING, "Jurisdictions have an area",
                        Trouble.Kind.JURISDICTION),
                new CannotBeComputed("elements-missing", Severity.WARNING, "Every bird has an element set",
                        Trouble.Kind.ELEMENTS_MISSING),
                new CannotBeComputed("elements-unusable", Severity.WARNING, "Element sets can be used",
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
                new BirdOff(),
                new BirdUnlit(),
                new TeamNumberTwice(),
                new TeamWithoutOperators(),
                new LoneOperator(),
                new OperatorInTwoTeams(),
                new LicenceBand(),
                new LicencePlace(),
                new SparesInRing(),
                new KitCannotWork(),
                new KitWithoutSpare(),
                new KitTooHeavy(),
                new EnergyShort(),
                new DayTimesWrong(),
                new PlanEmpty(),
                new StopIncomplete(),
                new StopTimesWrong(),
                new TurnIncomplete(),
                new TurnTimesWrong(),
                new StopsOverlap(),
                new StopOutsideDay(),
                new SameSite(),
                new SameSquare(),
                new SquareTooOften(),
                new BanBroken(),
                new LegTooLong(),
                new DrivingLimit(),
                new BreakMissing(),
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
                new UplinkForeign(),
                new AnnouncementOutdated());
    }
}
