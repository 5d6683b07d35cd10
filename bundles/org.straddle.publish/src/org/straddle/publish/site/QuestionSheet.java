package org.straddle.publish.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

import org.straddle.model.RiskProbability;
import org.straddle.model.RiskSeverity;
import org.straddle.model.naming.Naming;
import org.straddle.safety.SafetyNotes;
import org.straddle.safety.guided.AnswerKind;
import org.straddle.safety.guided.GuidedReview;
import org.straddle.safety.guided.Question;
import org.straddle.words.Catalogue;

/** The questions of a guided review on one page, for somebody at the roadside with a pencil. What the last visit knew stands beside each. */
public final class QuestionSheet {

    private static final Catalogue TEXTS = Catalogue.of(QuestionSheet.class);

    private QuestionSheet() {
    }

    public static SiteSheet of(GuidedReview review) {
        Map<String, List<String>> sections = new LinkedHashMap<>();
        int number = 0;
        String last = "";
        for (Question question : review.questions()) {
            List<String> lines = sections.computeIfAbsent(question.section(), any -> new ArrayList<>());
            lines.add(line(++number, question, review.answer(question)));
            if (question.id().endsWith(".here")) {
                lines.add(TEXTS.text("question.detail"));
            }
            last = question.section();
        }
        sections.get(last).add(TEXTS.text("question.second"));
        List<SiteSheet.Part> parts = new ArrayList<>();
        parts.add(new SiteSheet.Part(TEXTS.text("heading.scale"), List.of(scale())));
        sections.forEach((heading, lines) -> parts.add(new SiteSheet.Part(heading, lines)));
        return new SiteSheet(file(review), TEXTS.text("question.title", "site", Naming.name(review.site()), "day", review.day()), "", parts, List.of(),
                SafetyNotes.DEFERENCE);
    }

    private static String file(GuidedReview review) {
        String site = Naming.name(review.site()).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return "questions-" + (site.isEmpty() ? "site" : site);
    }

    private static String line(int number, Question question, String known) {
        String answer = question.kind() instanceof AnswerKind.Choice choice
                ? choice.options().stream().map(option -> TEXTS.text("question.box", "option", option.label())).collect(Collectors.joining("   "))
                : question.kind() instanceof AnswerKind.Figure figure ? TEXTS.text("question.figure", "unit", figure.unit())
                : TEXTS.text("question.line");
        boolean tell = !known.isBlank() && !(question.kind() instanceof AnswerKind.Choice);
        return TEXTS.text("question.asked", "number", number, "question", question.text(), "known", tell ? "yes" : "no", "last",
                tell ? known.replaceAll("\\s+", " ") : "", "why", question.id().endsWith(".here") ? question.help() : "", "answer", answer);
    }

    /** Numbers and letters for how bad and how likely, as MIL-STD-882E has them. */
    private static String scale() {
        String bad = RiskSeverity.VALUES.stream().filter(each -> each != RiskSeverity.NOT_RATED)
                .map(each -> each.getValue() + " " + Naming.of(each)).collect(Collectors.joining(", "));
        String likely = RiskProbability.VALUES.stream().filter(each -> each != RiskProbability.NOT_RATED)
                .map(each -> (char) ('A' + each.getValue() - 1) + " " + Naming.of(each)).collect(Collectors.joining(", "));
        return TEXTS.text("question.scale", "bad", bad, "likely", likely);
    }
}
