package org.straddle.atlas.scene;

import java.util.function.Function;

import org.straddle.model.Site;
import org.straddle.model.Team;

/**
 * What later parts of the program know of the things on a map.
 *
 * @param team the mark of a team on every sheet
 * @param attention what the checks found about a site
 */
public record Look(Function<Team, TeamStyle> team, Function<Site, Attention> attention) {

    /** Teams by number in one grey, and nothing found. */
    public static final Look PLAIN = new Look(
            team -> new TeamStyle(team.getNumber(), TeamStyle.Hatch.PLAIN, 0x7A8792), site -> Attention.NONE);
}
