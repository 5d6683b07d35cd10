package org.straddle.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.straddle.check.run.Checks;
import org.straddle.model.Acceptance;
import org.straddle.model.Base;
import org.straddle.model.BirdElements;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.KitItem;
import org.straddle.model.Operator;
import org.straddle.model.StraddlePackage;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.sky.prediction.PassSearch;

/** An acceptance stands as long as what was accepted is what is found, and falls with any change of it. */
class AcceptanceTest {

    /** Rules of which no small edit changes what they say, each with the reason. */
    private static final Map<String, String> UNCHANGING = Map.of(
            "days-wrong", "without days there is nothing to say but that",
            "earth-orientation-stale", "it tells of data that lie outside the event",
            "plan-empty", "a plan without stops is always the same");

    private static final Instant AT = Instant.parse("2031-06-01T00:00:00Z");

    static List<String> rules() {
        return Checks.standard().rules().stream().map(Rule::id).toList();
    }

    private static Rule named(String rule) {
        return Checks.standard().rules().stream().filter(r -> r.id().equals(rule)).findFirst().orElseThrow();
    }

    /** Every small change of every value in the event: what reads or weighs differently is no longer accepted. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void fallsWithWhatIsSaid(String id) {
        Rule rule = named(id);
        int changed = 0;
        for (RuleCase example : casesOf(rule)) {
            Accepted accepted = new Accepted(rule, example);
            accepted.assertStands("as accepted");
            accepted.editElsewhere();
            accepted.assertStands("after edits elsewhere");
            changed += accepted.editEverywhere();
            if (changed > 0 || UNCHANGING.containsKey(id)) {
                break;
            }
        }
        assertEquals(!UNCHANGING.containsKey(rule.id()), changed > 0, "small edits that change the finding: " + changed);
    }

    /** What a sentence rests on without showing it. */
    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource(delimiter = '|', textBlock = """
            bird-not-working      | Tern state=not_working / A: S1 10:00-11:00 [Tern 10:20-10:30] [Tern 10:40-10:45]      | T2 end=10:46
            ban-broken            | plan +bans site=S1 until=12:00 / A: S1 10:00-11:00                                     | Ban until=13:00
            lone-operator         | A operators=Ann / A: S1 10:00-11:00                                                    | Stop site=S2
            licence-band          | Ann bands=70cm / A: S1 10:00-11:00 [Tern 10:20-10:30] / Bo bands=70cm                 | Ann bands=23cm
            licence-place         | +jurisdictions X squares=HP94 +allowances licenceClass=Full bands=70cm / Ann licenceClass=Full / A: S1 10:00-11:00 [Tern 10:20-10:30] | Bo licenceClass=Full
            review-missing        | S1 -reviews / A: S1 10:00-11:00                                                        | S1 +visits date=2031-05-23
            review-missing        | S1 -reviews / A: S1 10:00-11:00                                                        | Visit roadSpeedKmh=90
            site-refused          | S1 +reviews reviewer=Ann date=2031-06-10 verdict=do_not_use / A: S1 10:00-11:00        | Visit roadSpeedKmh=90
            squares-not-occupied  | L markErrorM=8                                                                         | L longitudeDeg=-20.00000001
            operator-in-two-teams | B operators=Ann,Cy / A +days from=1d06:00 until=1d08:00                                | B +days from=1d06:00 until=1d07:00
            same-frequency        | A: S1 10:00-11:00 [Gull 10:20-10:30 @145.950] / B: S2 10:00-11:00 [Gull 10:20-10:30 @145.952] | T2 downlinkMhz=145.9521
            drive-too-long          | A: S1 10:00-11:00; S2 12:02-13:00                                                      | policies roadSpeedKmh=60.05
            driving-limit         | policies drivingLimitMinutes=130 / A: S2 10:00-11:00                                   | policies roadSpeedKmh=60.05
            peak-low              | policies minimumPeakElevationDeg=20 / A: S1 10:00-11:00 [Tern 10:20-10:30]             | T1 end=10:30:00.5
            """)
    void fallsWithWhatIsUnderTheSentence(String rule, String lines, String edit) {
        Sketch sketch = Sketch.drawn(Sketch.DAY, lines.replace(" / ", "\n"));
        Rule checked = named(rule);
        Finding before = first(checked, Outlook.of(sketch.event(), null));
        sketch.edit(edit);
        Finding after = first(checked, Outlook.of(sketch.event(), null));
        assertEquals(before.sentence(), after.sentence());
        assertEquals(before.key(), after.key());
        assertNotEquals(before.facts(), after.facts());
    }

    private static Finding first(Rule rule, Outlook outlook) {
        return new Checks(List.of(rule)).run(outlook, null).stream().findFirst().orElseThrow();
    }

    private static List<RuleCase> casesOf(Rule rule) {
        return RuleCase.all().stream().filter(example -> example.rule().equals(rule.id())).toList();
    }

    /** What things are called and in which zone times are said is in the sentence, but no fact. */
    private static final Set<EAttribute> NO_FACTS = Set.of(StraddlePackage.Literals.EVENT__ZONE, StraddlePackage.Literals.TEAM__NAME,
            StraddlePackage.Literals.TEAM__NUMBER, StraddlePackage.Literals.SITE__NAME, StraddlePackage.Literals.BIRD__NAME,
            StraddlePackage.Literals.BASE__NAME, StraddlePackage.Literals.OPERATOR__NAME,
            StraddlePackage.Literals.OPERATOR__CALL_SIGN, StraddlePackage.Literals.KIT__NAME,
            StraddlePackage.Literals.KIT_ITEM__NAME,
            StraddlePackage.Literals.JURISDICTION__NAME);

    /** The event of a case whose first finding is accepted. */
    private static final class Accepted {

        private final Checks checks;
        private final PassSearch search;
        private final Event event;
        private final Finding finding;
        private final String sentence;

        Accepted(Rule rule, RuleCase example) {
            checks = new Checks(List.of(rule));
            Sketch sketch = Sketch.drawn(example.day(), example.wrong());
            search = sketch.search();
            event = sketch.event();
            finding = checks.run(look(), null).get(0);
            sentence = finding.sentence();
            Acceptance acceptance = finding.acceptance("agreed", "Cy", AT);
            event.getAcceptances().add(acceptance);
        }

        private Outlook look() {
            return Outlook.of(event, search, null);
        }

        private List<Finding> same() {
            return checks.run(look(), null).stream().filter(found -> found.key().equals(finding.key())).toList();
        }

        void assertStands(String when) {
            assertTrue(same().stream().anyMatch(found -> found.accepted().isPresent()
                    && found.sentence().equals(sentence)), when + ": " + sentence);
        }

        /** Things that no rule reads. */
        void editElsewhere() {
            Base hut = Fresh.base();
            hut.setName("Hut nobody goes to");
            hut.setLatitudeDeg(64);
            hut.setLongitudeDeg(-19);
            event.getBases().add(hut);
            event.getSites().forEach(site -> site.getVisits().forEach(visit -> visit.setParking("behind the barn")));
            event.getOperators().stream().forEach(AcceptanceTest::move);
            event.eAllContents().forEachRemaining(thing -> {
                if (thing instanceof Turn turn) {
                    turn.setNote("bring the tall mast");
                } else if (thing instanceof KitItem item) {
                    item.setNote("in the blue bag");
                }
            });
        }

        /** @return how many edits made the finding read or weigh differently */
        int editEverywhere() {
            List<EObject> all = new ArrayList<>(List.of(event));
            event.eAllContents().forEachRemaining(all::add);
            int changed = 0;
            for (EObject thing : all) {
                for (EAttribute attribute : thing.eClass().getEAllAttributes()) {
                    if (thing instanceof Acceptance || attribute.isID() || attribute.isMany()
                            || isOrbit(thing, attribute)) {
                        continue;
                    }
                    Object before = thing.eGet(attribute);
                    for (Object next : steps(before, attribute)) {
                        thing.eSet(attribute, next);
                        changed += edited(thing.eClass().getName() + "." + attribute.getName() + " = " + next, !NO_FACTS.contains(attribute));
                    }
                    thing.eSet(attribute, before);
                }
            }
            return changed;
        }

        /** Each would have all passes searched anew, and no rule prints the figures of an orbit. */
        private static boolean isOrbit(EObject thing, EAttribute attribute) {
            return thing instanceof BirdElements && attribute.getEAttributeType().getInstanceClass() == double.class;
        }

        private int edited(String edit, boolean facts) {
            List<Finding> now = same();
            boolean allDiffer = !now.isEmpty();
            for (Finding found : now) {
                boolean differs = found.severity() != finding.severity() || !found.sentence().equals(sentence);
                allDiffer &= differs;
                assertTrue(!facts || !differs || found.accepted().isEmpty(), () -> edit + " leaves accepted: " + found.sentence());
            }
            return allDiffer ? 1 : 0;
        }
    }

    private static void move(Operator operator) {
        operator.setHome("by the sea");
        operator.setEmergencyContact("the neighbour");
    }

    private static List<Object> steps(Object now, EAttribute attribute) {
        if (now instanceof Instant instant) {
            return List.of(instant.minusSeconds(60), instant.plusSeconds(60), instant.plusSeconds(86_400));
        } else if (now instanceof LocalDate date) {
            return List.of(date.minusDays(1), date.plusDays(1));
        } else if (now instanceof Double number) {
            return List.of(number + 0.5, number - 0.5);
        } else if (now instanceof Integer number) {
            return List.of(number + 1, number - 1);
        } else if (now instanceof Boolean on) {
            return List.of(!on);
        } else if (now instanceof String text) {
            return List.of(text + "x");
        } else if (now instanceof Enumerator) {
            return ((EEnum) attribute.getEAttributeType()).getELiterals().stream()
                    .map(literal -> (Object) literal.getInstance()).filter(literal -> literal != now).toList();
        }
        return now == null && attribute.getEAttributeType().getInstanceClass() == String.class ? List.of("x") : List.of();
    }
}
