package org.straddle.check;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

import org.straddle.outlook.itinerary.CareRule;
import org.straddle.outlook.itinerary.PlanRule;

/**
 * The rules that are neither a {@link PlanRule} nor a {@link CareRule}: what else can be wrong with an event, in the order of
 * a preparation. Acceptances and guide pages name the ids, so an id never changes.
 */
public enum CheckRule {
    TIME_ZONE_UNKNOWN("time-zone-unknown"),
    DAYS_WRONG("days-wrong"),
    DEMAND_SQUARE_WRONG("demand-square-wrong"),
    POSITION_WRONG("position-wrong"),
    POSITION_NOT_ENTERED("position-not-entered"),
    HORIZON_POINT_WRONG("horizon-point-wrong"),
    SQUARE_NAMED_WRONG("square-named-wrong"),
    SITE_WITHOUT_SQUARES("site-without-squares"),
    SQUARES_NOT_OCCUPIED("squares-not-occupied"),
    BOUNDARY_ERROR("boundary-error"),
    KIND_MISMATCH("kind-mismatch"),
    VISIT_MISSING("visit-missing"),
    VISIT_OLD("visit-old"),
    VISIT_EXPIRED("visit-expired"),
    PERMISSION_LAPSED("permission-lapsed"),
    REVIEW_MISSING("review-missing"),
    REVIEW_EXPIRED("review-expired"),
    REVIEW_OUTDATED("review-outdated"),
    REVIEW_FALLEN("review-fallen"),
    REVIEW_SIGNED_ONCE("review-signed-once"),
    REVIEW_SIGNER_UNKNOWN("review-signer-unknown"),
    SITE_REFUSED("site-refused"),
    REVIEW_CONDITIONS("review-conditions"),
    MAST_TOO_HIGH("mast-too-high"),
    REGION_WRONG("region-wrong"),
    JURISDICTION_WRONG("jurisdiction-wrong"),
    ELEMENTS_MISSING("elements-missing"),
    ELEMENTS_UNUSABLE("elements-unusable"),
    ELEMENTS_TOO_OLD("elements-too-old"),
    ELEMENTS_OF_ANOTHER_BIRD("elements-of-another-bird"),
    EARTH_ORIENTATION_MISSING("earth-orientation-missing"),
    EARTH_ORIENTATION_STALE("earth-orientation-stale"),
    CATALOGUE_NUMBER_TWICE("catalogue-number-twice"),
    BIRD_INTERMITTENT("bird-intermittent"),
    BIRD_NEVER_WORKED("bird-never-worked"),
    BIRD_NOT_HEARD("bird-not-heard"),
    BIRD_UNREPORTED("bird-unreported"),
    DOWNLINK_MISSING("downlink-missing"),
    TEAM_NUMBER_TWICE("team-number-twice"),
    TEAM_WITHOUT_OPERATORS("team-without-operators"),
    OPERATOR_IN_TWO_TEAMS("operator-in-two-teams"),
    SPARE_LOOP("spare-loop"),
    KIT_ENTRY_WRONG("kit-entry-wrong"),
    STOCK_LENT_TWICE("stock-lent-twice"),
    KIT_CANNOT_WORK("kit-cannot-work"),
    KIT_WITHOUT_SPARE("kit-without-spare"),
    ASKED_NOT_PACKED("asked-not-packed"),
    KIT_TOO_HEAVY("kit-too-heavy"),
    ENERGY_SHORT("energy-short"),
    DAY_TIMES_WRONG("day-times-wrong"),
    DAY_WITHOUT_BASE("day-without-base"),
    BASE_NOT_PLACED("base-not-placed"),
    NIGHT_ELSEWHERE("night-elsewhere"),
    PLAN_EMPTY("plan-empty"),
    STOP_INCOMPLETE("stop-incomplete"),
    STOP_TIMES_WRONG("stop-times-wrong"),
    TURN_INCOMPLETE("turn-incomplete"),
    TURN_TIMES_WRONG("turn-times-wrong"),
    STOP_SHORT("stop-short"),
    SQUARE_TOO_OFTEN("square-too-often"),
    BREAK_MISSING("break-missing"),
    DRIVE_NOT_DRIVEN("drive-not-driven"),
    TURN_SHORT("turn-short"),
    PEAK_LOW("peak-low"),
    DOWNLINK_NOT_AGREED("downlink-not-agreed"),
    UPLINK_FOREIGN("uplink-foreign"),
    ANNOUNCEMENT_OUTDATED("announcement-outdated");

    /**
     * About the papers of a site: visits, reviews and permissions. They follow a plan, and no plan settles them. A
     * site that a review refuses is not among them: a plan can do without it.
     */
    public static final Set<String> PAPERS = EnumSet.of(VISIT_MISSING, VISIT_OLD, VISIT_EXPIRED, PERMISSION_LAPSED,
            REVIEW_MISSING, REVIEW_EXPIRED, REVIEW_OUTDATED, REVIEW_FALLEN, REVIEW_SIGNED_ONCE,
            REVIEW_SIGNER_UNKNOWN)
            .stream().map(CheckRule::id).collect(Collectors.toUnmodifiableSet());

    private final String id;

    CheckRule(String id) {
        this.id = id;
    }

    /** In kebab case. */
    public String id() {
        return id;
    }
}
