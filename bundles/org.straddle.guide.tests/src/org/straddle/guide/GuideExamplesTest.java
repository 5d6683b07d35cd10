package org.straddle.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.straddle.check.Finding;
import org.straddle.check.Fix;
import org.straddle.check.run.Checks;
import org.straddle.demo.DemoEvent;
import org.straddle.outlook.Outlook;

/** What a page shows of the demo event is what is found there. */
class GuideExamplesTest {

    private static final String OF_THE_DEMO = "In the demo event: ";

    private static Map<String, List<Finding>> found;

    @BeforeAll
    static void check() {
        found = Checks.standard().run(Outlook.of(DemoEvent.create(), null), null).stream()
                .collect(Collectors.groupingBy(Finding::rule));
    }

    @Test
    void whereTheDemoHasAFindingItIsTheExample() {
        List<String> wrong = new ArrayList<>();
        for (GuidePage page : Guide.index()) {
            if (example(page).startsWith(OF_THE_DEMO) != found.containsKey(page.rule())) {
                wrong.add(page.rule());
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void theDemoSaysWhatIsQuotedOfIt() {
        List<String> wrong = new ArrayList<>();
        for (GuidePage page : Guide.index()) {
            if (example(page).startsWith(OF_THE_DEMO)) {
                List<String> quoted = Sources.quoted(example(page));
                assertTrue(!quoted.isEmpty(), page.rule());
                if (found.getOrDefault(page.rule(), List.of()).stream()
                        .noneMatch(finding -> finding.sentence().matches(pattern(quoted.get(0))))) {
                    wrong.add(page.rule() + ": " + quoted.get(0));
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void whatFixesAFindingOfTheDemoIsQuoted() {
        List<String> missing = new ArrayList<>();
        for (GuidePage page : Guide.index()) {
            List<String> quoted = Sources.quoted(text(page, "How to fix it"));
            found.getOrDefault(page.rule(), List.of()).stream().flatMap(finding -> finding.fix().stream()).map(Fix::label)
                    .filter(label -> quoted.stream().noneMatch(words -> label.matches(pattern(words))))
                    .forEach(label -> missing.add(page.rule() + ": " + label));
        }
        assertEquals(List.of(), missing);
    }

    /** An ellipsis stands for what is left out. */
    private static String pattern(String quoted) {
        return Stream.of(quoted.split("…", -1)).map(Pattern::quote).collect(Collectors.joining(".*"));
    }

    private static String example(GuidePage page) {
        return text(page, "Example");
    }

    private static String text(GuidePage page, String heading) {
        return page.sections().get(Guide.HEADINGS.indexOf(heading)).text();
    }
}
