package org.straddle.plan;

/**
 * One team out on one day. Times are seconds from the problem's origin, places are indices into the
 * {@link RoadTable}.
 *
 * @param team         index of the team
 * @param from         leaves the start place no earlier
 * @param until        is at the end place no later
 * @param drivingLimit longest driving without breaks, seconds
 */
record PlanDay(int team, int from, int until, int startPlace, int endPlace, int drivingLimit) {
}
