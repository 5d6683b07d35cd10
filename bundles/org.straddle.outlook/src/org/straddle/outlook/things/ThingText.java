package org.straddle.outlook.things;

import java.time.Instant;

import org.eclipse.emf.ecore.EObject;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Operator;
import org.straddle.model.Plan;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Survey;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.words.Catalogue;

/** What a thing is called in lists, titles and messages; a thing without a name says so. */
public final class ThingText {

    private static final Catalogue TEXTS = Catalogue.of(ThingText.class);

    private ThingText() {
    }

    public static String of(EObject object) {
        if (object instanceof Event event) {
            return named(event.getName(), "event");
        } else if (object instanceof Base base) {
            return named(base.getName(), "base");
        } else if (object instanceof Operator operator) {
            return operator(operator);
        } else if (object instanceof Team team) {
            return team(team);
        } else if (object instanceof Kit kit) {
            return named(kit.getName(), "kit");
        } else if (object instanceof KitItem item) {
            return named(item.getName(), "item");
        } else if (object instanceof Site site) {
            return named(site.getName(), "site");
        } else if (object instanceof Bird bird) {
            return named(bird.getName(), "bird");
        } else if (object instanceof Plan) {
            return "Plan";
        } else if (object instanceof Stop stop) {
            return stop(stop);
        } else if (object instanceof Turn turn) {
            return bird(turn) + " " + span(turn.getStart(), turn.getEnd());
        } else if (object instanceof Survey survey) {
            return TEXTS.text("thingText.survey", "date", survey.getDate() == null
                    ? TEXTS.text("thingText.unknownDay") : survey.getDate());
        } else if (object instanceof Review review) {
            return TEXTS.text("thingText.review", "date", review.getDate() == null
                    ? TEXTS.text("thingText.unknownDay") : review.getDate());
        }
        return object.eClass().getName();
    }

    /** A quiet addition behind the name: squares, times, catalogue number. May be empty. */
    public static String detail(EObject object) {
        if (object instanceof Site site) {
            return String.join(" ", site.getSquares());
        } else if (object instanceof Bird bird) {
            return bird.getState().getLiteral();
        } else if (object instanceof Operator operator && !blank(operator.getName())) {
            return blank(operator.getCallSign()) ? "" : operator.getCallSign();
        } else if (object instanceof Kit kit) {
            return kit.getItems().size() + (kit.getItems().size() == 1 ? TEXTS.text("thingText.item")
                    : TEXTS.text("thingText.items"));
        } else if (object instanceof Stop stop) {
            return stop.getArrival() == null ? TEXTS.text("thingText.time")
                    : Times.utcDay(stop.getArrival()) + " " + span(stop.getArrival(), stop.getDeparture());
        }
        return "";
    }

    private static String operator(Operator operator) {
        return blank(operator.getName()) && !blank(operator.getCallSign()) ? operator.getCallSign()
                : named(operator.getName(), "operator");
    }

    private static String team(Team team) {
        String number = team.getNumber() > 0 ? team.getNumber() + " " : "";
        return number + named(team.getName(), "team");
    }

    private static String stop(Stop stop) {
        String team = stop.getTeam() == null ? TEXTS.text("thingText.team") : stop.getTeam().getNumber() > 0
                ? TEXTS.text("thingText.team2", "number", stop.getTeam().getNumber()) : team(stop.getTeam());
        return TEXTS.text("thingText.at", "team", team, "site", stop.getSite() == null
                ? TEXTS.text("thingText.site") : of(stop.getSite()));
    }

    private static String bird(Turn turn) {
        return turn.getBird() == null ? TEXTS.text("thingText.bird") : of(turn.getBird());
    }

    private static String span(Instant from, Instant until) {
        return Times.utcClock(from).replace("Z", "") + "–" + Times.utcClock(until);
    }

    private static String named(String name, String word) {
        return blank(name) ? TEXTS.text("thingText.unnamed", "word", word) : name;
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
