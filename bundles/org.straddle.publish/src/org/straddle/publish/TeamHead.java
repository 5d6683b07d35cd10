package org.straddle.publish;

import java.util.List;
import java.util.Locale;

import org.straddle.drawing.TeamMark;
import org.straddle.model.Operator;
import org.straddle.model.Team;
import org.straddle.words.Catalogue;

/**
 * A team as its sheets name it.
 *
 * @param callSigns the operators' call signs, the only word of them that is published
 */
public record TeamHead(TeamMark mark, String name, List<String> callSigns) {

    private static final Catalogue TEXTS = Catalogue.of(TeamHead.class);

    static TeamHead of(Team team) {
        return new TeamHead(TeamMark.of(team.getNumber()), Line.of(team.getName(), TEXTS.text("teamHead.unnamedTeam")),
                team.getOperators().stream().map(Operator::getCallSign).map(Line::of)
                        .map(callSign -> callSign.toUpperCase(Locale.ROOT))
                        .filter(callSign -> !callSign.isEmpty()).toList());
    }
}
