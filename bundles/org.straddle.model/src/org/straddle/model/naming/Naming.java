package org.straddle.model.naming;

import java.time.LocalDate;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Operator;
import org.straddle.model.Region;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Survey;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.words.Catalogue;
import org.straddle.words.Language;

/** What a thing is called in a sentence, a list or a title; one without a name says so. */
public final class Naming {

    private static final Naming CURRENT = new Naming(Language.current());

    private final Catalogue texts;

    private Naming(Language language) {
        texts = Catalogue.of(Naming.class).in(language);
    }

    /** In the language chosen at the start. */
    public static Naming inCurrent() {
        return CURRENT;
    }

    public static Naming in(Language language) {
        return language.equals(Language.current()) ? CURRENT : new Naming(language);
    }

    /** In the language chosen at the start: {@code Old pier}, {@code team 1 (Skua)}, {@code a site without a name}. */
    public static String name(EObject thing) {
        return CURRENT.of(thing);
    }

    /** The same of a thing; {@code no site} and the like are the caller's to say where there is none. */
    public String of(EObject thing) {
        if (thing instanceof Event event) {
            return named(event.getName(), event);
        } else if (thing instanceof Base base) {
            return named(base.getName(), base);
        } else if (thing instanceof Operator operator) {
            return named(blank(operator.getName()) ? operator.getCallSign() : operator.getName(), operator);
        } else if (thing instanceof Team team) {
            return team(team);
        } else if (thing instanceof Kit kit) {
            return named(kit.getName(), kit);
        } else if (thing instanceof KitItem item) {
            return named(item.getName(), item);
        } else if (thing instanceof Site site) {
            return named(site.getName(), site);
        } else if (thing instanceof Bird bird) {
            return named(bird.getName(), bird);
        } else if (thing instanceof Jurisdiction place) {
            return named(place.getName(), place);
        } else if (thing instanceof Region region) {
            return named(region.getName(), region);
        } else if (thing instanceof Stop stop) {
            return stop(stop);
        } else if (thing instanceof Turn turn) {
            return turn.getBird() == null ? texts.text("turn.nobird") : texts.text("turn.of", "bird", of(turn.getBird()));
        } else if (thing instanceof Survey visit) {
            return dated("visit", visit.getDate());
        } else if (thing instanceof Review review) {
            return dated("review", review.getDate());
        }
        return type(thing.eClass());
    }

    /** {@code team 2}: where the name of the team is beside it or takes too much room. */
    public static String number(Team team) {
        return CURRENT.numberOf(team);
    }

    public String numberOf(Team team) {
        return team.getNumber() > 0 ? texts.text("team.number", "number", team.getNumber()) : team(team);
    }

    /** What a kind of thing is called: {@code site}, {@code kit item}. */
    public String type(EClass type) {
        String key = "type." + type.getName();
        return texts.has(key) ? texts.text("type." + type.getName()) : type.getName();
    }

    /** What a feature of a thing is called, without its unit: {@code mark error}. */
    public static String feature(EStructuralFeature feature) {
        return CURRENT.featureOf(feature);
    }

    public String featureOf(EStructuralFeature feature) {
        return texts.has("feature." + feature.getName()) ? texts.text("feature." + feature.getName()) : feature.getName();
    }

    /** What a constant of the model is called: {@code line}, {@code go with care}. */
    public static String of(Enumerator constant) {
        return CURRENT.constant(constant);
    }

    public String constant(Enumerator constant) {
        return texts.text((Enum<?>) constant);
    }

    private String team(Team team) {
        return team.getNumber() > 0 ? blank(team.getName()) ? texts.text("team.number", "number", team.getNumber())
                : texts.text("team.both", "number", team.getNumber(), "name", team.getName())
                : blank(team.getName()) ? texts.text("unnamed.Team") : texts.text("team.name", "name", team.getName());
    }

    private String stop(Stop stop) {
        String team = stop.getTeam() == null ? texts.text("stop.noteam") : numberOf(stop.getTeam());
        return stop.getSite() == null ? texts.text("stop.nosite", "team", team)
                : texts.text("stop.at", "team", team, "site", of(stop.getSite()));
    }

    private String dated(String kind, LocalDate date) {
        return date == null ? texts.text("undated." + kind) : texts.text("dated." + kind, "date", date);
    }

    private String named(String name, EObject thing) {
        return blank(name) ? texts.text("unnamed." + thing.eClass().getName()) : name.strip();
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
