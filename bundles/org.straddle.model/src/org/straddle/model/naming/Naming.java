package org.straddle.model.naming;

import java.time.LocalDate;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.straddle.model.InertText;
import org.straddle.model.Operator;
import org.straddle.model.Review;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Visit;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.model.Written;
import org.straddle.words.Catalogue;
import org.straddle.words.Language;

/** What a thing is called in a sentence, a list or a title; one without a name says so. */
public final class Naming {

    private static final Naming CURRENT = new Naming(Language.current());

    /**
     * What it takes to name a thing, in any language, without the thing.
     *
     * @param type   name of its class in the model
     * @param name   null when it has none; in one line, or a name could pass for a line of the program's
     * @param number of a team; else 0
     */
    public record Called(String type, String name, int number) {

        public static Called of(EObject thing) {
            EStructuralFeature name = thing.eClass().getEStructuralFeature("name");
            Object written = name == null ? null : thing.eGet(name);
            if (thing instanceof Operator operator && Written.isBlank(operator.getName())) {
                written = operator.getCallSign();
            }
            return new Called(thing.eClass().getName(), written == null ? null : InertText.line((String) written), thing instanceof Team team ? team.getNumber() : 0);
        }
    }

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
        if (thing instanceof Stop stop) {
            return stop(stop);
        } else if (thing instanceof Turn turn) {
            return turn.getBird() == null ? texts.text("turn.nobird") : texts.text("turn.of", "bird", of(turn.getBird()));
        } else if (thing instanceof Visit visit) {
            return dated("visit", visit.getDate());
        } else if (thing instanceof Review review) {
            return dated("review", review.getDate());
        } else if (thing.eClass().getEStructuralFeature("name") == null) {
            return type(thing.eClass());
        }
        return of(Called.of(thing));
    }

    /** The same of a thing that is not at hand. */
    public String of(Called thing) {
        boolean blank = Written.isBlank(thing.name());
        if (thing.number() > 0) {
            return blank ? texts.text("team.number", "number", thing.number())
                    : texts.text("team.both", "number", thing.number(), "name", thing.name().strip());
        } else if (!blank) {
            return thing.type().equals("Team") ? texts.text("team.name", "name", thing.name().strip()) : thing.name().strip();
        }
        return texts.has("unnamed." + thing.type()) ? texts.text("unnamed." + thing.type())
                : texts.text("unnamed", "type", texts.text("type." + thing.type()));
    }

    /** {@code team 2}: where the name of the team is beside it or takes too much room. */
    public static String number(Team team) {
        return CURRENT.numberOf(team);
    }

    public String numberOf(Team team) {
        return team.getNumber() > 0 ? texts.text("team.number", "number", team.getNumber()) : of(Called.of(team));
    }

    /** What a kind of thing is called: {@code site}, {@code kit item}. */
    public String type(EClass type) {
        String key = "type." + type.getName();
        return texts.has(key) ? texts.text("type." + type.getName()) : type.getName();
    }

    /** What a feature of a thing is called, without its unit: {@code mark error}; a policy as its form calls it. */
    public static String feature(EStructuralFeature feature) {
        return CURRENT.featureOf(feature);
    }

    public String featureOf(EStructuralFeature feature) {
        if (feature.getEContainingClass() == Literals.POLICIES) {
            return policy(feature).inSentence();
        }
        return texts.has("feature." + feature.getName()) ? texts.text("feature." + feature.getName()) : feature.getName();
    }

    /** @param policy a feature of the policies */
    PolicyText policy(EStructuralFeature policy) {
        return new PolicyText(texts.text("policy." + policy.getName()), texts.text("policyUnit." + policy.getName()),
                texts.text("policyHelp." + policy.getName()), usual(policy.getDefaultValue()));
    }

    private String usual(Object value) {
        if (value instanceof Enumerator constant) {
            return constant(constant);
        } else if (value instanceof Boolean yes) {
            return texts.text(yes ? "policyYes" : "policyNo");
        }
        return value == null ? texts.text("policyEmpty") : String.valueOf(value).replaceFirst("\\.0$", "");
    }

    /** What a constant of the model is called: {@code line}, {@code go with care}. */
    public static String of(Enumerator constant) {
        return CURRENT.constant(constant);
    }

    public String constant(Enumerator constant) {
        return texts.text((Enum<?>) constant);
    }

    private String stop(Stop stop) {
        String team = stop.getTeam() == null ? texts.text("stop.noteam") : numberOf(stop.getTeam());
        return stop.getSite() == null ? texts.text("stop.nosite", "team", team)
                : texts.text("stop.at", "team", team, "site", of(stop.getSite()));
    }

    private String dated(String kind, LocalDate date) {
        return date == null ? texts.text("undated." + kind) : texts.text("dated." + kind, "date", date);
    }
}
