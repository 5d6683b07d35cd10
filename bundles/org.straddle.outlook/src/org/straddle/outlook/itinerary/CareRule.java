package org.straddle.outlook.itinerary;

/**
 * What a plan should not do, though it could: each is one rule of the check, which warns; the day sheet says it of a place
 * where a stop or turn fits; a search for a plan keeps to it. The condition stands once, in the class named beside it.
 */
public enum CareRule {

    /** {@link InHand}. */
    TIME_IN_HAND("time-in-hand"),
    /** {@link Duty}. */
    DUTY_TOO_LONG("duty-too-long"),
    /** {@link Duty}. */
    REST_TOO_SHORT("rest-too-short"),
    /** {@link Meals}. */
    MEAL_MISSING("meal-missing"),
    /** {@link Relief}, of a {@link Sitting}. */
    RELIEF_MISSING("relief-missing"),
    /** Follows from time in hand and planned drives: {@code Keeping} of the keeping package. */
    TURN_MAY_SLIP("turn-may-slip");

    private final String id;

    CareRule(String id) {
        this.id = id;
    }

    /** In kebab case. */
    public String id() {
        return id;
    }
}
