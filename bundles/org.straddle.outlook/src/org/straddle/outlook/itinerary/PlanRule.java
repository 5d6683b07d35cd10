package org.straddle.outlook.itinerary;

/**
 * What a plan may not do: each is one rule of the check, which turns it into a finding; the day sheet says of a place why
 * a stop or turn does not fit there; the planner proposes nothing that breaks it. The condition itself stands once, in
 * the class named beside it. Acceptances and guide pages name the ids, so an id never changes.
 */
public enum PlanRule {

    /** {@link Company}. */
    STOPS_OVERLAP("stops-overlap"),
    /** {@link TeamDays}. */
    STOP_OUTSIDE_DAY("stop-outside-day"),
    /** {@link Company}. */
    SAME_SITE("same-site"),
    /** {@link Company}. */
    SAME_SQUARE("same-square"),
    /** {@link org.straddle.outlook.Bans}. */
    BAN_BROKEN("ban-broken"),
    /** {@link Wheel}. */
    DRIVE_TOO_LONG("drive-too-long"),
    /** {@link Wheel}. */
    DRIVING_LIMIT("driving-limit"),
    /** {@link StationUp}. */
    TURN_OUTSIDE_STOP("turn-outside-stop"),
    /** {@link StationUp}. */
    TURN_BEFORE_SET_UP("turn-before-set-up"),
    /** {@link StationUp}. */
    TURN_AFTER_TAKE_DOWN("turn-after-take-down"),
    /** {@link TurnPass}. */
    TURN_WITHOUT_PASS("turn-without-pass"),
    /** {@link TurnPass}. */
    TURN_BELOW_MASK("turn-below-mask"),
    /** {@link TurnGap}. */
    TURNS_TOO_CLOSE("turns-too-close"),
    /** {@link SharedTurns}. */
    ONE_CHANNEL("one-channel"),
    /** {@link SharedTurns}. */
    SAME_FREQUENCY("same-frequency"),
    /** {@link BirdHours}. */
    BIRD_NOT_WORKING("bird-not-working"),
    /** {@link BirdHours}. */
    BIRD_OFF("bird-off"),
    /** {@link BirdHours}. */
    BIRD_UNLIT("bird-unlit"),
    /** {@link Crew}. */
    LONE_OPERATOR("lone-operator"),
    /** {@link Licences}. */
    LICENCE_BAND("licence-band"),
    /** {@link Licences}. */
    LICENCE_PLACE("licence-place");

    private final String id;

    PlanRule(String id) {
        this.id = id;
    }

    /** In kebab case. */
    public String id() {
        return id;
    }
}
