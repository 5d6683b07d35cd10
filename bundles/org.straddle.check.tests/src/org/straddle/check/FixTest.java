package org.straddle.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.check.run.Checks;
import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Snapshot;
import org.straddle.model.Stop;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.Outlook;

/** A fix settles its finding with one command on the live event, and one undo brings everything back. */
class FixTest {

    /** Lanes before and after, as the plan prints below; times are UTC. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            turn-outside-stop    | A: S1 10:00-11:00 [Tern 10:50-11:10] | S1 10:00-11:00 [Tern 10:50-11:00]
            turn-outside-stop    | A: S1 10:00-11:00 [Tern 12:00-12:10] | S1 10:00-11:00
            turn-before-set-up   | A: S1 10:00-11:00 [Tern 10:05-10:25] | S1 10:00-11:00 [Tern 10:15-10:25]
            turn-after-take-down | A: S1 10:00-11:00 [Tern 10:40-11:00] | S1 10:00-11:00 [Tern 10:40-10:50]
            turn-without-pass    | A: Far 10:00-11:00 [Tern 10:20-10:30] | Far 10:00-11:00
            turns-too-close      | A: S1 10:00-11:00 [Tern 10:20-10:30] [Gull 10:31-10:40] | S1 10:00-11:00 [Tern 10:20-10:30] [Gull 10:33-10:40]
            turns-too-close      | A: S1 10:00-11:00 [Tern 10:20-10:30] [Gull 10:31-10:36] | S1 10:00-11:00 [Tern 10:20-10:30]
            drive-too-long         | A: S1 10:00-11:00; S2 11:33-13:00 | S1 10:00-10:30 ; S2 11:33-13:00
            drive-too-long         | A: S1 10:00-11:00 [Tern 10:30-10:50]; S2 11:33-13:00 | S1 10:00-11:00 [Tern 10:30-10:50] ; S2 12:03-13:00
            drive-too-long         | A: S1 06:00-07:00 | S1 06:07-07:00
            drive-too-long         | A: S2 20:00-21:00 | S2 20:00-20:51
            stops-overlap        | A: S1 10:00-11:00; S2 10:30-12:00 | S1 10:00-11:00 ; S2 11:00-12:00
            stops-overlap        | A: S1 10:00-14:00; S2 11:00-12:00 | S1 10:00-11:00 ; S2 11:00-12:00
            same-site            | A: S1 10:00-11:00 / B: S1 10:30-12:00 | S1 10:00-11:00 ; S1 11:00-12:00
            one-channel          | A: S1 10:00-11:00 [Tern 10:20-10:30] / B: S2 10:00-11:00 [Tern 10:25-10:30] | S1 10:00-11:00 [Tern 10:20-10:30] ; S2 10:00-11:00
            bird-not-working     | Tern state=not_working / A: S1 10:00-11:00 [Tern 10:20-10:30] [Skua 10:40-10:50] | S1 10:00-11:00 [Skua 10:40-10:50]
            same-square          | A: S1 10:00-11:00 / B: S1b 10:30-12:00 | S1 10:00-11:00 ; S1b 11:00-12:00
            stop-outside-day     | A: S1 05:00-07:00 | S1 06:00-07:00
            stop-outside-day     | A: S1 21:00-23:00 | S1 21:00-22:00
            turn-short           | A: S1 10:00-11:00 [Tern 10:20-10:22] | S1 10:00-11:00
            peak-low             | policies minimumPeakElevationDeg=20 / A: S1 10:00-11:00 [Tern 10:20-10:30] | S1 10:00-11:00
            ban-broken           | plan +bans site=S1 / A: S1 10:00-11:00 [Tern 10:20-10:30]; S2 13:00-14:00 | S2 13:00-14:00
            ban-broken           | plan +bans bird=Tern / A: S1 10:00-11:00 [Tern 10:20-10:30] | S1 10:00-11:00
            square-too-often     | policies tooOftenPercent=5 / A: S1 10:00-12:00 [Tern 10:20-10:30] [Skua 10:40-10:50] [Gull 11:00-11:10] | S1 10:00-12:00 [Tern 10:20-10:30]
            bird-off             | Tern +calendar from=10:25 until=10:35 / A: S1 10:00-11:00 [Tern 10:20-10:30] | S1 10:00-11:00 [Tern 10:25-10:30]
            """)
    void settlesItsFinding(String rule, String before, String after) {
        Event live = Sketch.of(before.replace(" / ", "\n"));
        String untouched = plan(live);
        EditingDomain domain = domain();
        Finding finding = of(rule, live).get(0);

        Command command = finding.fix().orElseThrow().command(domain, live);
        assertTrue(command.canExecute());
        domain.getCommandStack().execute(command);
        assertEquals(after, plan(live));
        assertEquals(List.of(), of(rule, live));

        domain.getCommandStack().undo();
        assertEquals(untouched, plan(live));
        assertFalse(domain.getCommandStack().canUndo());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            stops-overlap | A: S1 10:00-11:00; S2 10:30-12:00 | S1 10:00-10:30 ; S2 10:30-12:00
            same-site     | A: S1 10:00-11:00 / B: S1 10:30-12:00 | S1 10:00-10:30 ; S1 10:30-12:00
            one-channel   | A: S1 10:00-11:00 [Tern 10:20-10:30] / B: S2 10:00-11:00 [Tern 10:25-10:30] | S1 10:00-11:00 ; S2 10:00-11:00 [Tern 10:25-10:30]
            """)
    void whatIsPinnedStaysAndTheOtherGivesWay(String rule, String before, String after) {
        Event live = Sketch.of(before.replace(" / ", "\n"));
        Stop second = live.getPlan().getStops().get(1);
        second.setPinned(true);
        second.getTurns().forEach(turn -> turn.setPinned(true));
        EditingDomain domain = domain();
        domain.getCommandStack().execute(of(rule, live).get(0).fix().orElseThrow().command(domain, live));
        assertEquals(after, plan(live));
        domain.getCommandStack().undo();
        Stop first = live.getPlan().getStops().get(0);
        first.setPinned(true);
        first.getTurns().forEach(turn -> turn.setPinned(true));
        assertEquals(Optional.empty(), of(rule, live).get(0).fix());
    }

    /** A frequency is shown to the kilohertz, so that what is agreed is what is read. */
    @Test
    void agreesOnWholeKilohertz() {
        Event live = Sketch.of("Gull\nA: S1 10:00-11:00 [Gull 10:20-10:30 @145.9502]\nB: S2 10:00-11:00 [Gull 10:20-10:30 @145.9502]");
        EditingDomain domain = domain();
        domain.getCommandStack().execute(of("same-frequency", live).get(0).fix().orElseThrow().command(domain, live));
        assertEquals(List.of(), of("same-frequency", live));
        double agreed = live.getPlan().getStops().get(1).getTurns().get(0).getDownlinkMhz();
        assertEquals(Math.round(agreed * 1e3), agreed * 1e3, 1e-6);
    }

    @Test
    void trimsATurnToItsPass() {
        Event live = Sketch.of("A: S1 06:00-22:00 [Auk pass2-90/+90]");
        EditingDomain domain = domain();
        domain.getCommandStack().execute(of("turn-below-mask", live).get(0).fix().orElseThrow().command(domain, live));
        assertEquals(List.of(), of("turn-below-mask", live));
        assertEquals(1, live.getPlan().getStops().get(0).getTurns().size());
    }

    /** A third team on 145.956 MHz is kept clear of too. */
    @Test
    void agreesOnTheNearestFrequencyThatIsFree() {
        Event live = Sketch.of("""
                A: S1 10:00-11:00 [Gull 10:20-10:30 @145.950]
                B: S2 10:00-11:00 [Gull 10:20-10:30 @145.952]
                +teams C number=3 operators=Ann
                C: Far 10:00-11:00 [Gull 10:20-10:30 @145.946]
                """);
        EditingDomain domain = domain();
        domain.getCommandStack().execute(of("same-frequency", live).get(0).fix().orElseThrow().command(domain, live));
        assertEquals(List.of(), of("same-frequency", live));
        assertEquals(145.956, live.getPlan().getStops().get(1).getTurns().get(0).getDownlinkMhz(), 1e-9);
    }

    /** Both get a part of their own, at once, and keep clear of a third team. */
    @Test
    void agreesOnDownlinksWhereNoneWere() {
        Event live = Sketch.of("""
                Gull +downlink lowMhz=145.935 highMhz=145.965
                A: S1 10:00-11:00 [Gull 10:20-10:30]
                B: S2 10:00-11:00 [Gull 10:20-10:30]
                +teams C number=3 operators=Ann
                C: S1b 10:00-11:00 [Gull 10:20-10:30 @145.950]
                """);
        EditingDomain domain = domain();
        Finding both = of("downlink-not-agreed", live).stream()
                .filter(finding -> finding.sentence().contains("neither")).findFirst().orElseThrow();
        domain.getCommandStack().execute(both.fix().orElseThrow().command(domain, live));
        assertEquals(List.of(), of("downlink-not-agreed", live));
        assertEquals(List.of(), of("same-frequency", live));
        assertEquals(List.of(145.944, 145.956), live.getPlan().getStops().stream().limit(2)
                .map(stop -> stop.getTurns().get(0).getDownlinkMhz()).sorted().toList());
        domain.getCommandStack().undo();
        assertEquals(3, of("downlink-not-agreed", live).size());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            kind-mismatch        | L kind=inside           | HP94 IP04, line
            square-named-wrong   | S1 squares=HP9,hp94     | hp94, inside
            squares-not-occupied | S1 squares=HP95         | HP94, inside
            squares-not-occupied | L longitudeDeg=-20.0002 | HP94, line
            squares-not-occupied | L squares=HP94,IP05     | HP94 IP04, line
            """)
    void correctsWhatIsWrittenDownOfASite(String rule, String before, String after) {
        Event live = Sketch.of(before);
        String name = before.substring(0, before.indexOf(' '));
        Site site = live.getSites().stream().filter(s -> s.getName().equals(name)).findFirst().orElseThrow();
        EditingDomain domain = domain();
        domain.getCommandStack().execute(of(rule, live).stream().filter(f -> f.objects().get(0).getId()
                .equals(site.getId())).findFirst().orElseThrow().fix().orElseThrow().command(domain, live));
        assertEquals(after, String.join(" ", site.getSquares()) + ", " + site.getKind().getLiteral());
        domain.getCommandStack().undo();
        assertFalse(domain.getCommandStack().canUndo());
    }

    @Test
    void aDriveThatNoShiftCanFixOffersNone() {
        Event live = Sketch.of("A: S1 10:00-11:00 [Tern 10:40-10:50]; S2 11:33-12:30 [Tern 11:50-12:00]");
        assertTrue(of("drive-too-long", live).get(0).fix().isEmpty());
    }

    @Test
    void doesNothingWhenTheTurnIsGone() {
        Event live = Sketch.of("A: Far 10:00-11:00 [Tern 10:20-10:30]");
        Fix fix = of("turn-without-pass", live).get(0).fix().orElseThrow();
        live.getPlan().getStops().get(0).getTurns().clear();
        assertFalse(fix.command(domain(), live).canExecute());
    }

    /** Rules read a copy, fixes act on the event that is being edited. */
    private static List<Finding> of(String rule, Event live) {
        return Checks.standard().run(Outlook.of(Snapshot.of(live), null), null).stream()
                .filter(finding -> finding.rule().equals(rule)).toList();
    }

    private static EditingDomain domain() {
        return new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());
    }

    private static String plan(Event event) {
        return event.getPlan().getStops().stream().map(FixTest::lane).collect(Collectors.joining(" ; "));
    }

    private static String lane(Stop stop) {
        return stop.getSite().getName() + " " + clock(stop.getArrival()) + "-" + clock(stop.getDeparture())
                + stop.getTurns().stream().map(turn -> " [" + turn.getBird().getName() + " " + clock(turn.getStart())
                        + "-" + clock(turn.getEnd()) + "]").collect(Collectors.joining());
    }

    private static String clock(Instant instant) {
        return instant.truncatedTo(ChronoUnit.MINUTES).toString().substring(11, 16);
    }
}
