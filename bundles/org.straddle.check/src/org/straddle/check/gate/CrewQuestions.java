package org.straddle.check.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;

import org.straddle.model.Operator;
import org.straddle.model.Team;
import org.straddle.outlook.PolicyFigures;
import org.straddle.outlook.itinerary.Crew;
import org.straddle.words.Catalogue;

/** Are there enough people, and do they know what a team beside a road must know? */
final class CrewQuestions {

    private static final Catalogue TEXTS = Catalogue.of(CrewQuestions.class);

    /** In what operators wrote of their skills. */
    private static final Pattern DRIVING = Pattern.compile("driv", Pattern.CASE_INSENSITIVE);
    private static final Pattern FIRST_AID = Pattern.compile("first.?aid", Pattern.CASE_INSENSITIVE);

    private final Team team;
    private final List<Operator> crew;
    private final List<OpenPoint> open = new ArrayList<>();

    private CrewQuestions(Team team) {
        this.team = team;
        this.crew = Crew.of(team);
    }

    /** @param traffic does traffic pass where the team goes? */
    static List<OpenPoint> of(Team team, PolicyFigures policies, boolean traffic) {
        CrewQuestions questions = new CrewQuestions(team);
        questions.ask(policies, traffic);
        return questions.open;
    }

    private void ask(PolicyFigures policies, boolean traffic) {
        if (crew.isEmpty()) {
            say(TEXTS.text("open.crew.nobody"));
            return;
        }
        if (Crew.isAlone(team, policies)) {
            say(TEXTS.text("open.crew.alone"));
        }
        if (crew.size() < 2 && traffic) {
            say(TEXTS.text("open.crew.lookout"));
        }
        if (crew.stream().noneMatch(operator -> can(operator, DRIVING))) {
            say(TEXTS.text("open.crew.driver"));
        }
        if (crew.stream().noneMatch(operator -> can(operator, FIRST_AID))) {
            say(TEXTS.text("open.crew.firstAid"));
        }
        if (team.getVehicle() != null && team.getVehicle().getSeats() < crew.size()) {
            say(TEXTS.text("open.crew.seats", "seats", team.getVehicle().getSeats(), "people", crew.size()));
        }
    }

    private void say(String sentence) {
        open.add(new OpenPoint(sentence, team));
    }

    private static boolean can(Operator operator, Pattern skill) {
        return operator.getSkills().stream().filter(Objects::nonNull).anyMatch(known -> skill.matcher(known).find());
    }
}
