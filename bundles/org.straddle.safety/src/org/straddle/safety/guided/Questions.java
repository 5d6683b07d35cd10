package org.straddle.safety.guided;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.straddle.model.HazardKind;
import org.straddle.model.RiskProbability;
import org.straddle.model.RiskSeverity;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Verdict;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;

/** What is asked, in the order in which somebody walks round a site. */
final class Questions {

    private static final Catalogue TEXTS = Catalogue.of(Questions.class);

    static final String YES = "yes";
    static final String NO = "no";

    /** Questions about the place whose answers stand in the visit as they are. */
    static final Map<String, EAttribute> PLACE = Map.ofEntries(Map.entry("road", Literals.VISIT__ROAD_SPEED_KMH),
            Map.entry("mast", Literals.VISIT__MAST_LIMIT_M), Map.entry("access", Literals.VISIT__ACCESS),
            Map.entry("allowed", Literals.VISIT__ALLOWED_BY), Map.entry("until", Literals.VISIT__ACCESS_UNTIL),
            Map.entry("parking", Literals.VISIT__PARKING), Map.entry("surface", Literals.VISIT__SURFACE),
            Map.entry("phone", Literals.VISIT__PHONE_COVERAGE), Map.entry("directions", Literals.VISIT__DIRECTIONS),
            Map.entry("meeting", Literals.VISIT__MEETING_POINT), Map.entry("hospital", Literals.VISIT__NEAREST_HOSPITAL),
            Map.entry("help", Literals.VISIT__NEAREST_HELP));

    private static final AnswerKind LINE = new AnswerKind.Line();
    private static final AnswerKind YES_OR_NO = new AnswerKind.Choice(List.of(new AnswerKind.Option(YES, TEXTS.text("option.yes")),
            new AnswerKind.Option(NO, TEXTS.text("option.no"))));

    private final Map<String, String> answers;
    private final List<Question> asked = new ArrayList<>();

    private Questions(Map<String, String> answers) {
        this.answers = answers;
    }

    /** Those that apply, as the answers given so far have it. */
    static List<Question> of(List<HazardSubject> hazards, Map<String, String> answers) {
        Questions questions = new Questions(answers);
        questions.place();
        hazards.forEach(questions::hazard);
        questions.sign();
        return List.copyOf(questions.asked);
    }

    private String answer(String id) {
        return answers.getOrDefault(id, "");
    }

    private void place() {
        ask("road", figure("kmh", 200), true);
        ask("wires", YES_OR_NO, true);
        if (answer("wires").equals(YES)) {
            ask("wires.distance", figure("metres", 1000), false);
            ask("wires.height", figure("metres", 200), false);
            ask("wires.kv", figure("kv", 1500), false);
            ask("wires.owner", YES_OR_NO, false);
        }
        ask("mast", figure("metres", 100), false);
        Stream.of("access", "allowed").forEach(id -> ask(id, LINE, false));
        ask("until", new AnswerKind.Day(), false);
        Stream.of("parking", "surface", "phone", "directions", "meeting", "hospital", "help").forEach(id -> ask(id, LINE, false));
    }

    private static AnswerKind figure(String unit, double most) {
        return new AnswerKind.Figure(TEXTS.text("unit." + unit), 0, most);
    }

    private void ask(String id, AnswerKind kind, boolean needed) {
        asked.add(new Question(id, TEXTS.text("section.place"), TEXTS.text("place." + id), TEXTS.text("help." + id), kind, needed));
    }

    private void hazard(HazardSubject hazard) {
        String help = hazard.seen().map(seen -> TEXTS.text("why.seen")).or(() -> hazard.proposed()
                .map(proposal -> TEXTS.text("why.proposed", "because", proposal.because()))).orElse("");
        detail(hazard, "here", YES_OR_NO, help, hazard.isKnown());
        String here = answer(hazard.id() + ".here");
        if (here.equals(NO) && hazard.isKnown()) {
            detail(hazard, "reason", LINE, help, true);
        } else if (here.equals(YES)) {
            detail(hazard, "what", LINE, "", false);
            detail(hazard, "distance", figure("metres", 1000), "", false);
            detail(hazard, "severity", severities(), "", false);
            detail(hazard, "probability", probabilities(), "", false);
            detail(hazard, "measure", LINE, "", false);
            detail(hazard, "owner", LINE, "", false);
            detail(hazard, "severityLeft", severities(), "", false);
            detail(hazard, "probabilityLeft", probabilities(), "", false);
        }
    }

    private void detail(HazardSubject hazard, String part, AnswerKind kind, String help, boolean needed) {
        asked.add(new Question(hazard.id() + "." + part, TEXTS.text("section.hazards"), TEXTS.text("hazard." + part, "kind", Naming.of(hazard.kind()),
                "known", !hazard.description().isEmpty() ? "yes" : hazard.kind() == HazardKind.OTHER ? "rest" : "no", "what", hazard.description()), help, kind, needed));
    }

    private static AnswerKind severities() {
        return new AnswerKind.Choice(RiskSeverity.VALUES.stream().filter(each -> each != RiskSeverity.NOT_RATED)
                .map(each -> new AnswerKind.Option(each.name(), Naming.of(each))).toList());
    }

    private static AnswerKind probabilities() {
        return new AnswerKind.Choice(RiskProbability.VALUES.stream().filter(each -> each != RiskProbability.NOT_RATED)
                .map(each -> new AnswerKind.Option(each.name(), Naming.of(each))).toList());
    }

    private void sign() {
        sign("verdict", new AnswerKind.Choice(Verdict.VALUES.stream().map(each -> new AnswerKind.Option(each.name(), Naming.of(each))).toList()));
        if (!answer("verdict").isEmpty() && !answer("verdict").equals(Verdict.GO_WITH_CARE.name())) {
            sign("conditions", LINE);
        }
        sign("name", LINE);
    }

    private void sign(String id, AnswerKind kind) {
        asked.add(new Question(id, TEXTS.text("section.sign"), TEXTS.text("sign." + id), "", kind, true));
    }
}
