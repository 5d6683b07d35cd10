package org.straddle.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import org.straddle.model.Policies;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage;
import org.straddle.model.naming.PolicyText;

/** Figures of the policies bear the names of the event's form and the defaults of the model. */
class GuideFiguresTest {

    private static final Pattern FIGURE = Pattern.compile("\"([^\"]+)\" \\(default ([^)]*)\\)");
    private static final String NONE = "None of its own.";

    @Test
    void everyDefaultIsThatOfTheModel() {
        Map<String, String> defaults = defaults();
        List<String> wrong = new ArrayList<>();
        for (GuidePage page : Guide.index()) {
            for (GuidePage.Section section : page.sections()) {
                Matcher figure = FIGURE.matcher(section.text());
                while (figure.find()) {
                    if (!figure.group(2).equals(defaults.get(figure.group(1)))) {
                        wrong.add(page.rule() + ": " + figure.group() + " is " + defaults.get(figure.group(1)));
                    }
                }
                if (FIGURE.matcher(section.text()).replaceAll("").contains("default")) {
                    wrong.add(page.rule() + ": a default without the name of its figure before it");
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void aPageNamesItsFiguresOrSaysThatThereIsNone() {
        List<String> wrong = new ArrayList<>();
        for (GuidePage page : Guide.index()) {
            String text = page.sections().get(Guide.HEADINGS.indexOf("Policy figure")).text();
            if (text.startsWith(NONE) == FIGURE.matcher(text).find()) {
                wrong.add(page.rule());
            }
        }
        assertEquals(List.of(), wrong);
    }

    /** By the label in the form of the event. */
    private static Map<String, String> defaults() {
        return StraddlePackage.Literals.POLICIES.getEStructuralFeatures().stream()
                .collect(Collectors.toMap(feature -> PolicyText.of(feature).label(), GuideFiguresTest::written));
    }

    /** The page of all policies shows each with its sentence, and the form of the event offers each. */
    @Test
    void everyPolicyIsOnItsPageAndInTheForm() {
        List<String> headings = Guide.page("policies").orElseThrow().sections().stream().map(GuidePage.Section::heading).toList();
        String form = Sources.read(Sources.BUNDLES.resolve("org.straddle.ui/src/org/straddle/ui/editors/EventEditor.java"));
        for (EStructuralFeature policy : StraddlePackage.Literals.POLICIES.getEStructuralFeatures()) {
            assertTrue(headings.contains(PolicyText.of(policy).label()), policy.getName());
            assertTrue(form.contains("Literals.POLICIES__" + constant(policy.getName()) + ")"), policy.getName());
        }
    }

    private static String written(EStructuralFeature feature) {
        Policies usual = StraddleFactory.eINSTANCE.createPolicies();
        Object value = usual.eGet(feature);
        return value == null ? "" : value instanceof Boolean yes ? yes ? "yes" : "no"
                : String.valueOf(value).replaceFirst("\\.0$", "") + unit(feature.getName());
    }

    /** Lengths carry their unit in the name. */
    private static String unit(String name) {
        Map<String, String> units = Map.of("Minutes", " min", "Days", " days", "Kmh", " km/h", "DegC", " °C",
                "Deg", "°", "Percent", " %", "SpanM", " m");
        return units.entrySet().stream().filter(unit -> name.endsWith(unit.getKey())).map(Map.Entry::getValue)
                .findFirst().orElse("");
    }

    /** {@code ROAD_SPEED_KMH} of {@code roadSpeedKmh}. */
    private static String constant(String feature) {
        return feature.replaceAll("(?<=[a-z])(?=[A-Z])", "_").toUpperCase(Locale.ROOT);
    }
}
