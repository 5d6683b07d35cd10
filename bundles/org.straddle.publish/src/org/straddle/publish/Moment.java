package org.straddle.publish;

import java.time.Instant;

/**
 * A time as a sheet prints it.
 *
 * @param instant rounded to what is known of it
 * @param utc printed in UTC, with its date when that is not the day it stands under
 * @param local the same in the event's zone
 */
public record Moment(Instant instant, String utc, String local) {
}
