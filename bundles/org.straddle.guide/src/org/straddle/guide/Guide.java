package org.straddle.guide;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.check.Rule;
import org.straddle.check.run.StandardRules;
import org.straddle.guide.GuidePage.Section;
import org.straddle.model.naming.PolicyText;

/** The pages of the guide: one for each standard rule, and some on topics. Titles of rules come from the rules, so that they are written once. */
public final class Guide {

    /** Every page has these, in this order. */
    public static final List<String> HEADINGS = List.of("What it means", "Why it matters", "Example", "How to fix it",
            "Policy figure", "When you must accept it again");

    /** May stand last on a page: ids of rules, parted by commas. */
    public static final String SEE_ALSO = "See also";

    /** Id of the page that explains all policies; what it says of each stands where their form takes it from, too. */
    private static final String POLICIES = "policies";

    /** Ids of the pages that are of no single rule. */
    private static final List<String> TOPICS = List.of("worth", POLICIES);

    private Guide() {
    }

    /** Pages that are of no single rule. */
    public static List<GuidePage> topics() {
        return TOPICS.stream().map(Guide::topic).toList();
    }

    private static GuidePage topic(String id) {
        try (InputStream text = Guide.class.getResourceAsStream("topics/" + id + ".txt")) {
            String[] titleAndBody = new String(text.readAllBytes(), StandardCharsets.UTF_8).split("\\R", 2);
            List<Section> sections = sections(titleAndBody[1]);
            if (id.equals(POLICIES)) {
                PolicyText.all().forEach(policy -> sections.add(new Section(policy.label(), policy.told())));
            }
            return new GuidePage(id, titleAndBody[0].strip(), sections, List.of());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All pages, in the order of a preparation. */
    public static List<GuidePage> index() {
        return StandardRules.all().stream().flatMap(rule -> page(rule).stream()).toList();
    }

    /** Empty when neither a standard rule nor a topic has the id. */
    public static Optional<GuidePage> page(String ruleId) {
        return TOPICS.contains(ruleId) ? Optional.of(topic(ruleId)) : StandardRules.all().stream().filter(rule -> rule.id().equals(ruleId)).findFirst().flatMap(Guide::page);
    }

    private static Optional<GuidePage> page(Rule rule) {
        try (InputStream text = Guide.class.getResourceAsStream("pages/" + rule.id() + ".txt")) {
            return text == null ? Optional.empty()
                    : Optional.of(page(rule, sections(new String(text.readAllBytes(), StandardCharsets.UTF_8))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static GuidePage page(Rule rule, List<Section> written) {
        List<Section> sections = written.stream().filter(section -> !section.heading().equals(SEE_ALSO)).toList();
        List<String> seeAlso = written.stream().filter(section -> section.heading().equals(SEE_ALSO))
                .flatMap(section -> Stream.of(section.text().split(",\\s*"))).toList();
        return new GuidePage(rule.id(), rule.title(), sections, seeAlso);
    }

    private static List<Section> sections(String text) {
        List<Section> sections = new ArrayList<>();
        for (String part : text.split("(?m)^# ")) {
            if (!part.isBlank()) {
                String[] headAndBody = part.split("\\R", 2);
                sections.add(new Section(headAndBody[0].strip(), headAndBody.length < 2 ? "" : headAndBody[1].strip()));
            }
        }
        return sections;
    }
}
