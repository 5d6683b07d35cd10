package org.straddle.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.check.gate.DepartureGate;
import org.straddle.check.gate.GateEntry;
import org.straddle.check.gate.GateItem;
import org.straddle.check.gate.GateKind;
import org.straddle.check.gate.Gates;
import org.straddle.check.run.Checks;
import org.straddle.model.Event;
import org.straddle.model.GateWord;
import org.straddle.model.Hazard;
import org.straddle.model.HazardKind;
import org.straddle.model.KitItem;
import org.straddle.model.RiskProbability;
import org.straddle.model.RiskSeverity;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.Outlook;

/** The departure gate: everything that shuts it, one at a time, in a world where nothing else does. */
class GatesTest {

    private static final StraddleFactory MAKE = StraddleFactory.eINSTANCE;
    private static final LocalDate DAY = Sketch.DAY;

    private final Event event = Sketch.of("A: S1 10:00-11:00");
    private final Team team = event.getTeams().get(0);
    private final Site site = event.getSites().get(0);
    private final TeamDay day = team.getDays().get(0);

    /** Puts everything in order. */
    private void order() {
        team.getOperators().get(0).getSkills().addAll(List.of("Driving", "first aid"));
        for (KitItem item : team.getKits().stream().flatMap(kit -> kit.getItems().stream()).toList()) {
            item.setTick(MAKE.createTick());
            item.getTick().setBy("Ann");
            item.getTick().setAt(Instant.parse("2031-06-20T12:00:00Z"));
        }
        if (team.getKits().isEmpty()) {
            throw new IllegalStateException("the sketch has kits");
        }
        KitItem battery = MAKE.createKitItem();
        battery.setId("battery");
        battery.setName("battery");
        battery.setStoresWh(500);
        battery.setDrawsW(5);
        battery.setTick(MAKE.createTick());
        battery.getTick().setBy("Ann");
        battery.getTick().setAt(Instant.parse("2031-06-20T12:00:00Z"));
        team.getKits().get(0).getItems().add(battery);
        day.setCheckIn("Coordinator, by telephone");
        for (GateKind kind : GateKind.values()) {
            if (kind.byWord()) {
                word(kind, false, null);
            }
        }
    }

    private GateWord word(GateKind kind, boolean override, String reason) {
        GateWord word = MAKE.createGateWord();
        word.setItem(kind.word());
        word.setBy("Di");
        word.setAt(day.getFrom().minusSeconds(3600));
        word.setOverride(override);
        word.setReason(reason);
        day.getGateWords().add(word);
        return word;
    }

    private Gates gates() {
        Outlook outlook = Outlook.of(event, null);
        return Gates.of(outlook, Checks.standard().run(outlook, null));
    }

    private DepartureGate gate() {
        return gates().of(team).get(0);
    }

    private List<GateKind> open() {
        return gate().open().stream().map(GateItem::kind).toList();
    }

    private GateItem item(GateKind kind) {
        return gate().items().stream().filter(item -> item.kind() == kind).findFirst().orElseThrow();
    }

    @Test
    void withEverythingInOrderItIsOpen() {
        order();
        assertEquals(List.of(), open(), () -> gate().toString());
        assertFalse(gate().isShut());
        assertFalse(gates().anyShut());
        assertTrue(gates().summary().startsWith("Every gate is open"), gates().summary());
        assertEquals(DAY, gate().day());
    }

    @Test
    void nothingIsInOrderByItself() {
        assertTrue(gate().isShut());
        assertTrue(gates().summary().matches("Not cleared: team 1, \\d+ items."), gates().summary());
    }

    @ParameterizedTest
    @EnumSource(GateKind.class)
    void aWordIsNeededWhereAWordSettles(GateKind kind) {
        order();
        day.getGateWords().removeIf(word -> word.getItem().equals(kind.word()));
        assertEquals(kind.byWord() ? List.of(kind) : List.of(), open());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " "})
    void aWordWithoutANameIsNobodys(String name) {
        order();
        day.getGateWords().forEach(word -> word.setBy(name));
        assertEquals(Arrays.stream(GateKind.values()).filter(GateKind::byWord).toList(), open());
    }

    @Test
    void oneSiteWithoutAReviewShutsIt() {
        order();
        site.getReviews().clear();
        assertEquals(List.of(GateKind.REVIEW), open());
        assertTrue(item(GateKind.REVIEW).sentence().startsWith("S1: Nobody signed a review"), item(GateKind.REVIEW).sentence());
    }

    @Test
    void conditionsOfAReviewAreSaid() {
        order();
        site.getReviews().get(0).setConditions("only when dry");
        assertEquals(List.of(), open());
        assertTrue(item(GateKind.REVIEW).sentence().contains("only when dry"), item(GateKind.REVIEW).sentence());
    }

    @Test
    void aMissingOrOldVisitShutsIt() {
        order();
        site.getVisits().get(0).setDate(LocalDate.parse("2029-06-01"));
        site.getReviews().get(0).setVisit(null);
        assertEquals(List.of(GateKind.VISIT), open());
        site.getVisits().clear();
        assertEquals(List.of(GateKind.VISIT), open());
    }

    @Test
    void aLapsedPermissionShutsIt() {
        order();
        site.getVisits().get(0).setAccessUntil(DAY.minusDays(1));
        assertEquals(List.of(GateKind.PERMISSION), open());
    }

    @Test
    void aHazardWithoutMeasureOrRatingShutsItAndOneThatLeavesTooMuch() {
        order();
        Hazard hazard = MAKE.createHazard();
        hazard.setKind(HazardKind.WATER);
        site.getVisits().get(0).getHazards().add(hazard);
        assertTrue(item(GateKind.HAZARDS).sentence().contains("no measure"), item(GateKind.HAZARDS).sentence());
        hazard.setMeasure("Stay away.");
        assertTrue(item(GateKind.HAZARDS).sentence().contains("not rated"), item(GateKind.HAZARDS).sentence());
        hazard.setSeverityLeft(RiskSeverity.CATASTROPHIC);
        hazard.setProbabilityLeft(RiskProbability.REMOTE);
        assertTrue(item(GateKind.HAZARDS).sentence().contains("serious risk"), item(GateKind.HAZARDS).sentence());
        hazard.setProbabilityLeft(RiskProbability.IMPROBABLE);
        assertEquals(List.of(), open());
    }

    @Test
    void onePersonAloneShutsItUnlessThePolicyAllowsIt() {
        order();
        while (team.getOperators().size() > 1) {
            team.getOperators().remove(1);
        }
        assertEquals(List.of(GateKind.CREW), open());
        event.getPolicies().setLoneOperatorAllowed(true);
        assertEquals(List.of(), open());
        site.getVisits().get(0).setRoadSpeedKmh(50);
        assertTrue(item(GateKind.CREW).sentence().contains("watch the traffic"), "nobody is left for a lookout");
    }

    @Test
    void aDriverAndAFirstAiderAreNamedAndEverybodyHasASeat() {
        order();
        team.getOperators().get(0).getSkills().clear();
        assertTrue(item(GateKind.CREW).sentence().contains("drives") && item(GateKind.CREW).sentence().contains("first aid"));
        order();
        team.setVehicle(MAKE.createVehicle());
        team.getVehicle().setSeats(1);
        assertTrue(item(GateKind.CREW).sentence().contains("1 seat for"), item(GateKind.CREW).sentence());
    }

    @Test
    void whatIsNotTickedShutsIt() {
        order();
        team.getKits().get(0).getItems().get(0).setTick(null);
        assertEquals(List.of(GateKind.PACKED), open());
    }

    @Test
    void aLookAtTheWeatherGetsOld() {
        order();
        GateWord looked = day.getGateWords().stream().filter(word -> word.getItem().equals("weather")).findFirst().orElseThrow();
        looked.setAt(day.getFrom().minusSeconds(25 * 3600));
        assertEquals(List.of(GateKind.WEATHER), open());
    }

    @Test
    void thunderInTheForecastShutsIt() {
        order();
        event.getForecasts().add(MAKE.createForecast());
        event.getForecasts().get(0).setDay(DAY);
        assertEquals(List.of(), open());
        event.getForecasts().get(0).setThunder(true);
        assertEquals(List.of(GateKind.WEATHER), open());
    }

    @Test
    void anOverrideNeedsNameAndReasonAndIsTold() {
        order();
        site.getReviews().clear();
        GateWord taken = word(GateKind.REVIEW, true, " ");
        assertEquals(List.of(GateKind.REVIEW), open(), "no reason");
        taken.setReason("Landowner walked it with us.");
        assertEquals(List.of(), open());
        assertEquals(GateItem.State.OVERRIDDEN, item(GateKind.REVIEW).state());
        assertTrue(item(GateKind.REVIEW).sentence().startsWith("Di overrides this: Landowner walked it with us. Still open: S1"),
                item(GateKind.REVIEW).sentence());
        assertTrue(gate().sentence().contains("1 item is overridden"), gate().sentence());
    }

    @Test
    void anOverrideDoesNotSettle() {
        order();
        day.getGateWords().removeIf(word -> word.getItem().equals("briefed"));
        word(GateKind.BRIEFED, true, "On the road already.");
        assertEquals(GateItem.State.OVERRIDDEN, item(GateKind.BRIEFED).state());
    }

    /** A team that sets out in the evening of the 21st works past midnight in Oslo (UTC+2). */
    @Test
    void aStopPastMidnightBelongsToTheDayOnWhichTheTeamSetOut() {
        Event late = Sketch.of("A: S1 21:00-21:30; S1b 22:30-23:30");
        late.getTeams().get(0).getDays().get(0).setUntil(Instant.parse("2031-06-22T02:00:00Z"));
        Outlook outlook = Outlook.of(late, null);
        assertEquals(List.of(DAY), Gates.of(outlook, List.of()).all().stream().map(DepartureGate::day).toList());
    }

    @Test
    void noStopNoGate() {
        Event idle = Sketch.of("");
        Outlook outlook = Outlook.of(idle, null);
        assertEquals(List.of(), Gates.of(outlook, List.of()).all());
        assertFalse(Gates.of(outlook, List.of()).anyShut());
    }

    /** Missing or lapsed papers weigh as much as a square that is worked twice. */
    @Test
    void papersWeighAsMuchAsASquareWorkedTwice() {
        var rules = Checks.standard().rules();
        Severity square = rules.stream().filter(rule -> rule.id().equals("same-square")).findFirst().orElseThrow().severity();
        for (String paper : Stream.concat(CheckRule.PAPERS.stream(), Stream.of(CheckRule.SITE_REFUSED.id())).toList()) {
            Optional<Rule> rule = rules.stream().filter(each -> each.id().equals(paper)).findFirst();
            assertTrue(rule.orElseThrow().severity().compareTo(square) <= 0, paper);
        }
    }

    @Test
    void noLinePromisesAnything() {
        Pattern promise = Pattern.compile("\\b(un)?safe(r|st|ly)?\\b", Pattern.CASE_INSENSITIVE);
        site.getReviews().clear();
        List<String> lines = gate().items().stream().map(GateItem::line).toList();
        assertEquals(GateKind.values().length, lines.size());
        assertEquals(List.of(), lines.stream().filter(line -> promise.matcher(line).find()).toList());
    }

    @Test
    void anEntryReplacesTheOneBeforeAndIsRefusedInWords() {
        var domain = new org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain(
                new org.straddle.model.provider.StraddleItemProviderAdapterFactory(),
                new org.eclipse.emf.common.command.BasicCommandStack());
        order();
        Instant now = day.getFrom().minusSeconds(60);
        domain.getCommandStack().execute(new GateEntry(GateKind.BRIEFED, " Cy ", now, false, null).on(domain, day));
        assertEquals(1, day.getGateWords().stream().filter(word -> word.getItem().equals("briefed")).count());
        assertEquals(List.of(), open());
        domain.getCommandStack().undo();
        assertEquals("Di", day.getGateWords().stream().filter(word -> word.getItem().equals("briefed")).findFirst().orElseThrow().getBy());
        assertEquals(1, new GateEntry(GateKind.BRIEFED, " ", now, false, null).problems().size());
        assertEquals(1, new GateEntry(GateKind.REVIEW, "Cy", now, false, null).problems().size(), "a word does not make a review");
        assertEquals(1, new GateEntry(GateKind.REVIEW, "Cy", now, true, " ").problems().size());
        assertEquals(List.of(), new GateEntry(GateKind.REVIEW, "Cy", now, true, "We know it.").problems());
    }
}
