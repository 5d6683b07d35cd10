package org.straddle.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.check.rules.ScopedRule;
import org.straddle.check.run.Checked;
import org.straddle.check.run.Checks;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Snapshot;
import org.straddle.outlook.Outlook;
import org.straddle.sky.prediction.PassSearch;

/** Checking after an edit finds what a whole check finds, and looks at no more than the edit touches. */
class RecheckTest {

    private static final PassSearch SEARCH = new PassSearch();

    private static final String PLAN = """
            +jurisdictions X squares=HP94 uplinkAllowed=false +allowances licenceClass=Full bands=2m
            +jurisdictions Y squares=JO20 uplinkAllowed=false
            event +demands square=HP94 sharePercent=50
            event +demands square=IP04 sharePercent=70
            event +enteredDrives from=S1 to=S2 minutes=70 origin=map
            plan +bans bird=Auk from=06:00 until=08:00
            policies tooOftenPercent=10
            radio drawsW=100
            power storesWh=50
            S1 +horizon elevationDeg=3 +visits date=2031-06-10 expires=2031-06-20
            A: S1 07:00-09:00 [Tern 07:20-07:30] [Gull 07:40-07:50 @145.950]; L 12:00-14:00 [Skua 12:20-12:30]; S2 15:00-16:00 [Auk 15:20-15:30]
            B: S2 08:00-10:00 [Skua 08:20-08:30] [Tern 08:40-08:50]; S1b 12:10-18:00 [Gull 16:20-16:30] [Skua 12:20-12:40]
            """;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void findsWhatAWholeCheckFinds(long seed) {
        edits(Sketch.of(PLAN), new Random(seed), 40, "seed " + seed);
    }

    static List<RuleCase> cases() {
        List<String> scoped = Checks.standard().rules().stream().filter(ScopedRule.class::isInstance).map(Rule::id)
                .toList();
        return RuleCase.all().stream().filter(example -> scoped.contains(example.rule())).toList();
    }

    /** Begins with a finding of every rule that has a scope, some of which no random edit of a plan comes upon. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void findsWhatAWholeCheckFindsAroundEveryRule(RuleCase example) {
        Event event = Sketch.drawn(example.day(), example.wrong()).event();
        List<Finding> start = Checks.standard().run(Outlook.of(Snapshot.of(event), SEARCH, null), null);
        assertTrue(start.stream().anyMatch(finding -> finding.rule().equals(example.rule())));
        event.getAcceptances().add(start.get(0).acceptance("agreed", "Cy", Instant.EPOCH));
        edits(event, new Random(example.wrong().hashCode()), 6, example.toString());
    }

    /** Edits far from the stops and teams whose findings they change. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"Ban bird=Tern from=06:00 until=22:00", "EnteredDrive minutes=270", "Jurisdiction squares=IP04", "Jurisdiction drivingLimitMinutes=30", "Jurisdiction breakAfterMinutes=1",
        "Operator licenceClass=Full", "KitItem count=0", "policies turnGapMinutes=30", "Base longitudeDeg=-28",
        "event +revisions number=1 facts=0"})
    void seesAnEditFarOff(String edit) {
        Sketch sketch = Sketch.drawn(Sketch.DAY, PLAN + "\nA: S1 16:10-17:00; S2 18:30-19:00");
        Outlook outlook = Outlook.of(Snapshot.of(sketch.event()), SEARCH, null);
        Checked before = Checks.standard().check(outlook, null);
        sketch.edit(edit);
        Checked after = before.again(Outlook.after(outlook, Snapshot.of(sketch.event()), SEARCH, null), null);
        assertEquals(described(Checks.standard().run(Outlook.of(after.outlook().event(), SEARCH, null), null)),
                described(after.findings()));
        assertNotEquals(described(before.findings()), described(after.findings()));
    }

    private static void edits(Event event, Random random, int number, String where) {
        Outlook outlook = Outlook.of(Snapshot.of(event), SEARCH, null);
        Checked checked = Checks.standard().check(outlook, null);
        for (int i = 0; i < number; i++) {
            String edit = RandomEdit.of(event, random);
            outlook = Outlook.after(outlook, Snapshot.of(event), SEARCH, null);
            checked = checked.again(outlook, null);
            List<Finding> whole = Checks.standard().run(Outlook.of(outlook.event(), SEARCH, null), null);
            assertEquals(described(whole), described(checked.findings()), where + ", edit " + i + ": " + edit);
            for (int k = 0; k < whole.size(); k++) {
                assertObjects(whole.get(k).objects(), checked.findings().get(k).objects());
            }
        }
    }

    @Test
    void looksOnlyAtWhatAnEditTouches() {
        Event event = Sketch.of(PLAN);
        Outlook outlook = Outlook.of(Snapshot.of(event), SEARCH, null);
        Checked checked = Checks.standard().check(outlook, null);
        assertEquals(checked.subjects(), checked.looked());

        Checked same = checked.again(Outlook.after(outlook, Snapshot.of(event), SEARCH, null), null);
        assertEquals(0, same.looked());

        event.getPlan().getStops().get(0).getTurns().get(0).setNote("bring the tall mast");
        Checked one = checked.again(Outlook.after(outlook, Snapshot.of(event), SEARCH, null), null);
        assertTrue(one.looked() > 0 && one.looked() < one.subjects() / 2, one.looked() + " of " + one.subjects());
    }

    private static void assertObjects(List<Identified> expected, List<Identified> actual) {
        assertEquals(expected.size(), actual.size());
        for (int i = 0; i < expected.size(); i++) {
            assertSame(expected.get(i), actual.get(i));
        }
    }

    private static List<String> described(List<Finding> findings) {
        return findings.stream().map(f -> f.severity() + " " + f.key() + " " + f.facts() + " " + f.when() + " "
                + f.sentence() + f.fix().map(fix -> " [" + fix + "]").orElse("") + f.accepted().isPresent()).toList();
    }

    /** Some change of some thing: a value, a reference, one thing more or less, another order. */
    private static final class RandomEdit {

        private final Random random;

        private RandomEdit(Random random) {
            this.random = random;
        }

        static String of(Event event, Random random) {
            List<EObject> all = new ArrayList<>();
            all.add(event);
            event.eAllContents().forEachRemaining(all::add);
            RandomEdit edit = new RandomEdit(random);
            while (true) {
                EObject target = edit.any(all);
                String done = random.nextInt(4) > 0 ? edit.value(target) : edit.structure(target, all);
                if (!done.isEmpty()) {
                    return target.eClass().getName() + " " + done;
                }
            }
        }

        /** Of each kind as often, so that a single ban or drive time has its share beside all the kit. */
        private EObject any(List<EObject> all) {
            List<EClass> kinds = all.stream().map(EObject::eClass).distinct().toList();
            EClass kind = kinds.get(random.nextInt(kinds.size()));
            List<EObject> ofKind = all.stream().filter(thing -> thing.eClass() == kind).toList();
            return ofKind.get(random.nextInt(ofKind.size()));
        }

        private String value(EObject target) {
            List<EAttribute> attributes = target.eClass().getEAllAttributes().stream()
                    .filter(a -> !a.isMany() && !a.isID() && a.isChangeable()).toList();
            if (attributes.isEmpty()) {
                return "";
            }
            EAttribute attribute = attributes.get(random.nextInt(attributes.size()));
            Object now = target.eGet(attribute);
            Object next = changed(now, attribute);
            if (next == null) {
                return "";
            }
            target.eSet(attribute, next);
            return attribute.getName() + " " + now + " -> " + next;
        }

        private Object changed(Object now, EAttribute attribute) {
            if (now instanceof Instant instant) {
                return instant.plusSeconds(60L * (random.nextInt(121) - 60));
            } else if (now instanceof LocalDate date) {
                return date.plusDays(random.nextInt(3) - 1);
            } else if (now instanceof Double number) {
                return number + (random.nextBoolean() ? 0.001 : 1) * (random.nextInt(21) - 10);
            } else if (now instanceof Integer number) {
                return number + random.nextInt(3) - 1;
            } else if (now instanceof Boolean on) {
                return !on;
            } else if (now instanceof String text) {
                return random.nextInt(5) == 0 ? "" : attribute.getName().equals("zone") ? "UTC" : text + "x";
            } else if (now instanceof org.eclipse.emf.common.util.Enumerator) {
                var literals = ((org.eclipse.emf.ecore.EEnum) attribute.getEAttributeType()).getELiterals();
                return literals.get(random.nextInt(literals.size())).getInstance();
            }
            return null;
        }

        @SuppressWarnings("unchecked")
        private String structure(EObject target, List<EObject> all) {
            List<EReference> references = target.eClass().getEAllReferences().stream()
                    .filter(r -> r.isChangeable() && !r.isContainer()).toList();
            if (references.isEmpty()) {
                return "";
            }
            EReference reference = references.get(random.nextInt(references.size()));
            if (reference.isMany()) {
                EList<EObject> list = (EList<EObject>) target.eGet(reference);
                if (list.isEmpty()) {
                    return "";
                }
                EObject one = list.get(random.nextInt(list.size()));
                switch (random.nextInt(3)) {
                    case 0 -> list.move(random.nextInt(list.size()), one);
                    case 1 -> {
                        if (reference.isContainment()) {
                            EcoreUtil.delete(one, true);
                        } else {
                            list.remove(one);
                        }
                    }
                    default -> {
                        if (!reference.isContainment()) {
                            return "";
                        }
                        EObject copy = EcoreUtil.copy(one);
                        if (random.nextInt(4) > 0) {
                            renamed(copy);
                        }
                        list.add(random.nextInt(list.size() + 1), copy);
                    }
                }
                return reference.getName() + " " + list.size();
            }
            List<EObject> candidates = all.stream().filter(reference.getEReferenceType()::isInstance).toList();
            if (reference.isContainment() || candidates.isEmpty()) {
                return "";
            }
            target.eSet(reference, random.nextInt(6) == 0 ? null : candidates.get(random.nextInt(candidates.size())));
            return reference.getName();
        }

        /** A copy with the ids of the first would leave the event in doubt; sometimes it does, and then all is checked. */
        private void renamed(EObject copy) {
            if (copy instanceof Identified thing) {
                thing.setId(thing.getId() + random.nextInt());
            }
            copy.eAllContents().forEachRemaining(inner -> {
                if (inner instanceof Identified thing) {
                    thing.setId(thing.getId() + random.nextInt());
                }
            });
        }
    }
}
