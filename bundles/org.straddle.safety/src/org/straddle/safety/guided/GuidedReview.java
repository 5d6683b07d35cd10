package org.straddle.safety.guided;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.model.Policies;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;
import org.straddle.model.Verdict;
import org.straddle.safety.SafetyNotes;
import org.straddle.safety.SignOff;
import org.straddle.words.Catalogue;

/**
 * A review under way: the answers given so far, at first those of the last visit. Out of it come a new visit, because nobody
 * overwrites an old one, and a review of it.
 *
 * @param day local day on which somebody looks
 * @param answers by id of their questions; what is not there was not answered
 */
public record GuidedReview(Site site, LocalDate day, Policies policies, List<HazardProposal> proposals, Map<String, String> answers) {

    private static final Catalogue TEXTS = Catalogue.of(GuidedReview.class);

    public GuidedReview {
        proposals = List.copyOf(proposals);
        answers = Map.copyOf(answers);
    }

    /** Begins one with what the last visit saw. */
    public static GuidedReview begin(Site site, LocalDate day, Policies policies, List<HazardProposal> proposals) {
        Policies own = policies != null ? policies : StraddleFactory.eINSTANCE.createPolicies();
        GuidedReview empty = new GuidedReview(site, day, own, proposals, Map.of());
        return new GuidedReview(site, day, own, proposals, LastVisit.answers(empty.lastVisit(), empty.hazards()));
    }

    Optional<Visit> lastVisit() {
        return SafetyNotes.of(site, day, policies).visit();
    }

    List<HazardSubject> hazards() {
        return HazardSubject.of(lastVisit(), proposals);
    }

    /** Those that apply, as the answers given so far have it. */
    public List<Question> questions() {
        return Questions.of(hazards(), answers);
    }

    public String answer(Question question) {
        return answers.getOrDefault(question.id(), "");
    }

    public GuidedReview with(Question question, String answer) {
        Map<String, String> all = new HashMap<>(answers);
        all.put(question.id(), answer.strip());
        return new GuidedReview(site, day, policies, proposals, all);
    }

    /** What is wrong with an answer, in a sentence. */
    public Optional<String> problem(Question question, String answer) {
        if (question.needed() && answer.isBlank()) {
            return Optional.of(TEXTS.text("answer.needed"));
        }
        return question.id().equals("name") ? SignOff.signerProblem(site, answer, verdict()) : question.kind().problem(answer);
    }

    private Verdict verdict() {
        return answers.getOrDefault("verdict", "").isEmpty() ? null : Verdict.valueOf(answers.get("verdict"));
    }

    /** What keeps it from being signed, a sentence each. */
    public List<String> problems() {
        List<String> problems = new ArrayList<>();
        questions().forEach(question -> problem(question, answer(question))
                .ifPresent(problem -> problems.add(TEXTS.text("answer.of", "question", question.text(), "problem", problem))));
        return problems;
    }

    /** @throws IllegalStateException if there are {@link #problems} */
    public Visit visit() {
        problems().stream().findFirst().ifPresent(problem -> {
            throw new IllegalStateException(problem);
        });
        return new VisitOfAnswers(this).visit();
    }

    /**
     * The review of the visit, which must stand in the site already: it keeps what lies under it.
     *
     * @param at when it is signed
     */
    public Review review(Visit visit, Instant at) {
        SignOff signOff = new SignOff(answers.get("name"), day, verdict(), answers.getOrDefault("conditions", ""),
                SignOff.lastDay(day, policies));
        Review review = signOff.review(site, at);
        review.setVisit(visit);
        return review;
    }
}
