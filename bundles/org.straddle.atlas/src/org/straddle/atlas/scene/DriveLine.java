package org.straddle.atlas.scene;

import java.time.LocalDate;
import java.util.List;

import org.straddle.drawing.TeamMark;

/**
 * A drive, as the shortest way over the ground: roads are not known here.
 *
 * @param team whose drive it is
 * @param teamId of that team
 * @param day local date of the event on which it begins
 * @param from and to: names
 * @param parts lines on the plane, metres; more than one where the way leaves the map
 */
public record DriveLine(TeamMark team, String teamId, LocalDate day, String from, String to, List<double[]> parts) {
}
