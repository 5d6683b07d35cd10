package org.straddle.worth;

/**
 * How long a turn serves the chasers of one group.
 *
 * @param minutes effective minutes, averaged over all places of the group
 * @param share   part of the group that has the bird up for a minute of effective time or more, 0 to 1
 * @param inReach effective minutes, averaged over that part; 0 when it is empty
 */
public record GroupMinutes(double minutes, double share, double inReach) {

    /** Effective time that a chaser needs at least to be in reach. */
    public static final double LEAST_MINUTES = 1;

    /** @param parts what part of the group each place stands for; they add up to 1 */
    public static GroupMinutes of(double[] minutesOfPlaces, double[] parts, int from, int until) {
        double sum = 0;
        double share = 0;
        double reached = 0;
        for (int place = from; place < until; place++) {
            double minutes = minutesOfPlaces[place];
            sum += parts[place] * minutes;
            if (minutes >= LEAST_MINUTES) {
                share += parts[place];
                reached += parts[place] * minutes;
            }
        }
        return new GroupMinutes(sum, Math.min(1, share), share > 0 ? reached / share : 0);
    }
}
