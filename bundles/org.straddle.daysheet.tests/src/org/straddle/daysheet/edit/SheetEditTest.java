package org.straddle.daysheet.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.eclipse.emf.common.command.CommandStack;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.daysheet.RandomRove;
import org.straddle.daysheet.Rove;
import org.straddle.model.Ban;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.sky.Window;

class SheetEditTest {

    private final Rove rove = new Rove("UTC").team(1, "08-20").team(2, "08-20");
    private final Stop stop = rove.stop(1, "A", 64, -21, "10-12");
    private final Turn early = rove.turn(stop, "Tern-1 (demo)", "10:20-10:30");
    private final Turn late = rove.turn(stop, "Tern-1 (demo)", "11:40-11:50");
    private final Stop other = rove.stop(2, "B", 64, -20, "11-13");
    private final EditingDomain domain = RandomRove.domain();

    private void run(SheetEdit edit) throws RefusedEdit {
        String before = lines(rove.event());
        CommandStack stack = domain.getCommandStack();
        stack.execute(edit.command(domain, rove.event()));
        String after = lines(rove.event());
        stack.undo();
        assertEquals(before, lines(rove.event()), "one undo brings everything back");
        assertFalse(stack.canUndo(), "one step");
        stack.redo();
        assertEquals(after, lines(rove.event()));
    }

    /** The plan, a line for each stop, the turns behind it in the order of the model. */
    private static String lines(Event event) {
        StringBuilder lines = new StringBuilder();
        for (Stop stop : event.getPlan().getStops()) {
            lines.append(stop.getTeam().getNumber()).append(' ').append(stop.getSite().getName()).append(' ')
                    .append(stop.getArrival()).append(' ').append(stop.getDeparture())
                    .append(stop.isPinned() ? " pinned" : "");
            stop.getTurns().forEach(turn -> lines.append(", ").append(turn.getId(), 0, 4).append(' ')
                    .append(turn.getBird().getName()).append(' ').append(turn.getStart()).append(' ')
                    .append(turn.getEnd()).append(turn.isPinned() ? " pinned" : ""));
            lines.append('\n');
        }
        for (Ban ban : event.getPlan().getBans()) {
            lines.append("ban ").append(ban.getTeam()).append(ban.getSite()).append(ban.getBird()).append(ban.getFrom());
        }
        return lines.toString();
    }

    private static Window time(String time) {
        String[] ends = time.split("-");
        return new Window(Rove.at(ends[0]), Rove.at(ends[1]));
    }

    private String team(int number) {
        return rove.event().getTeams().get(number - 1).getId();
    }

    @Test
    void aMovedStopKeepsTheTurnsThatItCovers() throws RefusedEdit {
        run(new PlaceStop(stop.getId(), team(1), time("11-13")));
        assertEquals(Rove.at("11"), stop.getArrival());
        assertEquals(List.of(late), stop.getTurns());
    }

    @Test
    void aTurnThatWouldStickOutStays() throws RefusedEdit {
        run(new PlaceStop(stop.getId(), team(1), time("10:25-12")));
        assertEquals(List.of(early, late), stop.getTurns());
    }

    @Test
    void aStopIsHandedOverWithItsTurns() throws RefusedEdit {
        run(new PlaceStop(stop.getId(), team(2), time("10-12")));
        assertEquals(2, stop.getTeam().getNumber());
        assertEquals(List.of(early, late), stop.getTurns());
    }

    @Test
    void aTurnIsStretchedAndHandedOver() throws RefusedEdit {
        run(new PlaceTurn(late.getId(), stop.getId(), time("11:40-11:55")));
        assertEquals(Rove.at("11:55"), late.getEnd());
        domain.getCommandStack().flush();
        run(new PlaceTurn(late.getId(), other.getId(), time("11:42-11:52")));
        assertEquals(List.of(early), stop.getTurns());
        assertEquals(List.of(late), other.getTurns());
    }

    @Test
    void aSplitStopSharesItsTurns() throws RefusedEdit {
        run(new SplitStop(stop.getId(), Rove.at("11")));
        Stop second = rove.event().getPlan().getStops().get(2);
        assertEquals(List.of(Rove.at("10"), Rove.at("11"), Rove.at("11"), Rove.at("12")),
                List.of(stop.getArrival(), stop.getDeparture(), second.getArrival(), second.getDeparture()));
        assertEquals(List.of(early), stop.getTurns());
        assertEquals(List.of(late), second.getTurns());
        assertNotEquals(stop.getId(), second.getId());
    }

    @Test
    void aSplitTurnLeavesTheGapOfThePolicy() throws RefusedEdit {
        rove.event().getPolicies().setTurnGapMinutes(2);
        run(new SplitTurn(late.getId(), Rove.at("11:44")));
        Turn second = stop.getTurns().get(2);
        assertEquals(List.of(Rove.at("11:44"), Rove.at("11:46"), Rove.at("11:50")),
                List.of(late.getEnd(), second.getStart(), second.getEnd()));
        assertEquals(late.getBird(), second.getBird());
    }

    @Test
    void turnsAreAddedAndRemoved() throws RefusedEdit {
        AddTurn add = AddTurn.of(other.getId(), early.getBird().getId(), time("12-12:10"));
        run(add);
        assertEquals(add.turnId(), other.getTurns().get(0).getId());
        domain.getCommandStack().flush();
        run(new Remove(stop.getId()));
        assertEquals(List.of(other), rove.event().getPlan().getStops());
    }

    @Test
    void aBanNamesWhatWasChosenAndTakesTheTurnOut() throws RefusedEdit {
        run(new Forbid(late.getId(), true, false, true, Optional.of(time("10-12")), "it is silent", true));
        Ban ban = rove.event().getPlan().getBans().get(0);
        assertEquals(stop.getTeam(), ban.getTeam());
        assertEquals(null, ban.getSite());
        assertEquals(late.getBird(), ban.getBird());
        assertEquals(Rove.at("12"), ban.getUntil());
        assertEquals(List.of(early), stop.getTurns());
    }

    @Test
    void aBanOnNothingIsRefused() {
        SheetEdit nothing = new Forbid(stop.getId(), false, false, true, Optional.empty(), "", false);
        assertTrue(assertThrows(RefusedEdit.class, () -> nothing.command(domain, rove.event())).getMessage()
                .endsWith("Choose what it is about."));
    }

    @Test
    void aStopIsNotSplitThroughATurn() {
        String refusal = assertThrows(RefusedEdit.class, () -> new SplitStop(stop.getId(), Rove.at("11:45"))
                .command(domain, rove.event())).getMessage();
        assertTrue(refusal.contains("Tern-1 (demo) 11:40–11:50Z") && refusal.contains("before or after"), refusal);
    }

    @Test
    void whatIsGoneIsRefused() {
        assertThrows(RefusedEdit.class, () -> new Remove("nothing").command(domain, rove.event()));
    }

    @Test
    void aPinIsLetGoAndSetInOneStep() throws RefusedEdit {
        run(new Pin(late.getId(), true));
        assertTrue(late.isPinned());
        domain.getCommandStack().flush();
        run(new Pin(late.getId(), false));
        assertFalse(late.isPinned());
    }

    /** Any edits in any order: a pinned thing keeps its team, site, bird and time, and undoing all gives the start. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void pinsNeverMove(long seed) {
        Event event = RandomRove.of(seed);
        Random random = new Random(seed);
        String before = lines(event);
        List<String> pinned = pinned(event);
        assertFalse(pinned.isEmpty());
        int done = 0;
        for (int i = 0; i < 400; i++) {
            try {
                domain.getCommandStack().execute(anyEdit(event, random).command(domain, event));
                done++;
            } catch (RefusedEdit refused) {
                assertTrue(refused.getMessage().matches(".+\\. .+\\."), refused.getMessage());
            }
            assertEquals(pinned, pinned(event));
        }
        assertTrue(done > 100, done + " of 400 edits");
        while (domain.getCommandStack().canUndo()) {
            domain.getCommandStack().undo();
            done--;
        }
        assertEquals(0, done);
        assertEquals(before, lines(event));
    }

    private static SheetEdit anyEdit(Event event, Random random) {
        Stop stop = any(event.getPlan().getStops(), random);
        Stop to = any(event.getPlan().getStops(), random);
        String team = any(event.getTeams(), random).getId();
        Window window = Window.of(stop.getArrival().plusSeconds(random.nextInt(7200) - 3600L),
                java.time.Duration.ofSeconds(600 + random.nextInt(7200)));
        String turn = stop.getTurns().isEmpty() ? "none" : any(stop.getTurns(), random).getId();
        return switch (random.nextInt(6)) {
            case 0 -> new PlaceStop(stop.getId(), random.nextBoolean() ? team : stop.getTeam().getId(), window);
            case 1 -> new PlaceTurn(turn, to.getId(), window);
            case 2 -> new SplitStop(stop.getId(), window.start());
            case 3 -> new SplitTurn(turn, window.start());
            case 4 -> AddTurn.of(to.getId(), any(event.getBirds(), random).getId(), window);
            default -> new Remove(random.nextInt(4) == 0 ? stop.getId() : turn);
        };
    }

    private static <T> T any(List<T> of, Random random) {
        return of.get(random.nextInt(of.size()));
    }

    private static List<String> pinned(Event event) {
        List<String> pinned = new ArrayList<>();
        for (Stop stop : event.getPlan().getStops()) {
            String place = stop.getTeam().getNumber() + " " + stop.getSite().getName();
            if (stop.isPinned()) {
                pinned.add(stop.getId() + " " + place + " " + stop.getArrival() + " " + stop.getDeparture());
            }
            stop.getTurns().stream().filter(Turn::isPinned).forEach(turn -> pinned.add(turn.getId() + " " + place + " "
                    + turn.getBird().getName() + " " + turn.getStart() + " " + turn.getEnd()));
        }
        return pinned.stream().sorted().toList();
    }
}
