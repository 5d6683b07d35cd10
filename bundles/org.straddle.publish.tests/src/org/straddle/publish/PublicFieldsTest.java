package org.straddle.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.PublishedTurn;
import org.straddle.model.Revision;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage;
import org.straddle.outlook.Outlook;

/**
 * What everybody may see of an event is written down field by field in {@code public-fields.txt}. A private field may
 * change to anything, and not one byte of the public sheets changes with it; one that shapes what is printed is never
 * printed itself. Findings reach the public sheets as one word, draft or not, and are not looked at here.
 */
class PublicFieldsTest {

    private static final String MARK = "Xq7";
    private static final double ODD = 0.0070717;

    private final Sketch sketch = new Sketch();
    private Event event;
    private String before;
    private static final Map<String, String> ANSWERS = answers();

    @BeforeEach
    void fill() {
        sketch.turn(sketch.stop(sketch.first, sketch.corner, "20T09:00", "20T11:00"), "20T10:00", "20T10:10");
        sketch.turn(sketch.stop(sketch.second, sketch.line, "20T12:00", "20T14:00"), "20T12:30", "20T12:40");
        event = sketch.event;
        Revision earlier = StraddleFactory.eINSTANCE.createRevision();
        earlier.setAt(Instant.EPOCH);
        earlier.setFacts("earlier");
        PublishedTurn promise = StraddleFactory.eINSTANCE.createPublishedTurn();
        promise.setStart(Sketch.june("21T10:00"));
        promise.setEnd(Sketch.june("21T10:10"));
        promise.getSquares().add("HP93");
        promise.setBird("Tern-1 (demo)");
        promise.setBirdId("gone");
        promise.setFrequency("145.870 MHz");
        promise.setTeam(1);
        promise.setTeamId("gone");
        earlier.getPromises().add(promise);
        // Before the one that is published.
        earlier.setNumber(Sketch.FIRST.revision());
        event.getRevisions().add(earlier);
        fill(event);
        before = publicSheets(event);
        assertTrue(before.toUpperCase().contains("CHANGES SINCE"), before);
    }

    private static Map<String, String> answers() {
        try (InputStream in = PublicFieldsTest.class.getResourceAsStream("public-fields.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> !line.startsWith("#"))
                    .collect(Collectors.toMap(line -> line.split(" ")[0], line -> line.split(" ")[1], (a, b) -> {
                        throw new IllegalStateException("Two answers for one field");
                    }, LinkedHashMap::new));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** At least one object of every kind, so that every field is there to be changed. */
    private static void fill(EObject object) {
        for (EReference part : object.eClass().getEAllContainments()) {
            if (!object.eIsSet(part)) {
                EObject made = EcoreUtil.create(part.getEReferenceType());
                if (made instanceof Identified identified) {
                    identified.setId("made " + part.getName() + System.identityHashCode(made));
                }
                // What a spare or a promise would be is made above; a made site or team would be one more in the plan.
                if (part.isMany()) {
                    @SuppressWarnings("unchecked")
                    List<EObject> parts = (List<EObject>) object.eGet(part);
                    parts.add(made);
                } else {
                    object.eSet(part, made);
                }
            }
        }
        for (EObject part : List.copyOf(object.eContents())) {
            fill(part);
        }
    }

    private static String publicSheets(Event event) {
        PublicationSettings second = new PublicationSettings(Sketch.FIRST.revision() + 1, Sketch.FIRST.revisedAt());
        return Publication.of(Outlook.of(event, null), List.of(), second).sheets().stream()
                .filter(sheet -> sheet.audience() == Audience.PUBLIC).map(Sheet::text).collect(Collectors.joining("\n"));
    }

    private static Map<String, EStructuralFeature> features() {
        Map<String, EStructuralFeature> features = new TreeMap<>();
        for (EClassifier each : StraddlePackage.eINSTANCE.getEClassifiers()) {
            if (each instanceof EClass kind) {
                kind.getEStructuralFeatures().forEach(feature -> features.put(kind.getName() + "." + feature.getName(), feature));
            }
        }
        return features;
    }

    @Test
    void everyFieldOfTheModelHasAnAnswer() {
        assertEquals(features().keySet(), new TreeSet<>(ANSWERS.keySet()), "Give every new field an answer in public-fields.txt");
        assertEquals(Set.of("public", "shapes", "private"), Set.copyOf(ANSWERS.values()));
    }

    @Test
    void noPrivateFieldReachesThePublicSheets() {
        List<String> reaching = new ArrayList<>();
        features().forEach((name, feature) -> {
            if (ANSWERS.get(name).equals("private")) {
                Event changed = changed(feature, name);
                if (!publicSheets(changed).equals(before)) {
                    reaching.add(name);
                }
            }
        });
        assertEquals(List.of(), reaching);
    }

    @Test
    void whatOnlyShapesThePublicSheetsIsNotPrintedThere() {
        features().forEach((name, feature) -> {
            if (ANSWERS.get(name).equals("shapes") && feature instanceof EAttribute && !name.startsWith("BirdElements.")) {
                String sheets = publicSheets(changed(feature, name));
                assertFalse(sheets.contains(MARK) || sheets.contains("70717"), name + " is printed");
            }
        });
    }

    /** That the two tests above can fail. */
    @Test
    void aPublicFieldReachesThePublicSheets() {
        for (String name : List.of("Event.name", "Event.club", "Event.announcementText", "Operator.callSign", "Team.name", "Bird.name",
                "PublishedTurn.bird", "Link.lowMhz", "Event.firstDay", "Site.kind", "Team.number", "Turn.start", "Revision.number")) {
            assertEquals("public", ANSWERS.get(name), name);
            assertNotEquals(before, publicSheets(changed(features().get(name), name)), name);
        }
        assertTrue(publicSheets(changed(StraddlePackage.Literals.TEAM__NAME, "Team.name")).contains(MARK));
    }

    private Event changed(EStructuralFeature feature, String name) {
        Event copy = EcoreUtil.copy(event);
        int count = change(copy, feature);
        for (var all = copy.eAllContents(); all.hasNext();) {
            EObject each = all.next();
            if (!(feature instanceof EReference)) {
                count += change(each, feature);
            }
        }
        if (feature instanceof EReference) {
            List<EObject> all = new ArrayList<>();
            copy.eAllContents().forEachRemaining(all::add);
            for (EObject each : all) {
                count += change(each, feature);
            }
        }
        assertTrue(count > 0, "no object has a " + name);
        return copy;
    }

    private static int change(EObject object, EStructuralFeature feature) {
        if (!feature.getEContainingClass().isSuperTypeOf(object.eClass())) {
            return 0;
        }
        if (feature instanceof EReference) {
            if (feature.isMany()) {
                ((List<?>) object.eGet(feature)).clear();
            } else {
                object.eSet(feature, null);
            }
        } else if (feature.isMany()) {
            @SuppressWarnings("unchecked")
            List<Object> values = (List<Object>) object.eGet(feature);
            List<Object> other = values.isEmpty() ? List.of(other(feature, null)) : values.stream().map(v -> other(feature, v)).toList();
            values.clear();
            values.addAll(other);
        } else {
            object.eSet(feature, other(feature, object.eGet(feature)));
        }
        return 1;
    }

    /** Another value of the kind, one that is found again where it is printed. */
    private static Object other(EStructuralFeature feature, Object value) {
        Class<?> type = feature.getEType().getInstanceClass();
        if (type == String.class) {
            return MARK + " " + feature.getName();
        } else if (type == double.class || type == Double.class) {
            return (value == null ? 10 : (Double) value) + ODD;
        } else if (type == int.class) {
            return (Integer) value + 1;
        } else if (type == boolean.class) {
            return !(Boolean) value;
        } else if (type == Instant.class) {
            return value == null ? Instant.parse("2031-06-20T07:07:17Z") : ((Instant) value).plusSeconds(3600);
        } else if (type == LocalDate.class) {
            return value == null ? LocalDate.parse("2031-06-22") : ((LocalDate) value).plusDays(1);
        } else if (feature.getEType() instanceof EEnum words) {
            int index = value == null ? 0 : ((Enumerator) value).getValue();
            return words.getEEnumLiteral((index + 1) % words.getELiterals().size()).getInstance();
        }
        throw new IllegalStateException("No other value is known for " + feature);
    }
}
