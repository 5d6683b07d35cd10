package org.straddle.exchange.chasers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.grid.Square;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;

class ChaserListTest {

    @Test
    void readsATableWithAndWithoutAHeader() throws ReadException {
        String rows = "q0abc,JO22ab,hp94 HP95\nQ0DEF/P;IO91;HP94,IP04\n";
        for (String text : List.of(rows, "call sign,locator,squares needed\n" + rows)) {
            ChaserList list = read(text);
            assertEquals(List.of("Q0ABC", "Q0DEF/P"), list.requests().stream().map(Request::callSign).toList());
            assertEquals("JO22ab", list.requests().get(0).locator());
            assertEquals(Set.of("HP94", "HP95"), squares(list, 0));
            assertEquals(Set.of("HP94", "IP04"), squares(list, 1));
            assertEquals(List.of(), list.refused());
        }
    }

    @Test
    void readsRequestLinesBetweenOtherWordsOfMails() throws ReadException {
        ChaserList list = read("""
                From: somebody
                Hello, I really need these!
                NEED Q0ABC JO22 HP94 HP95
                > need: Q0DEF io91wm IP04, HP94
                73, and good luck
                """);
        assertEquals(2, list.requests().size());
        assertEquals("IO91wm", list.requests().get(1).locator());
        assertEquals(List.of(), list.refused());
    }

    @Test
    void countsDoublesOnce() throws ReadException {
        ChaserList list = read("NEED Q0ABC JO22 HP94\nNEED q0abc JO23 HP95\nNEED Q0ABC JO23 HP94\n");
        assertEquals(1, list.requests().size());
        assertEquals(2, list.doubles());
        assertEquals("JO23", list.requests().get(0).locator());
        assertEquals(Set.of("HP94", "HP95"), squares(list, 0));
    }

    @Test
    void refusesLineByLine() throws ReadException {
        ChaserList list = read("""
                NEED Q0ABC JO22 HP94
                NEED Q0DEF
                NEED QABC JO22 HP94
                NEED Q0GHI ZZ22 HP94
                NEED Q0JKL JO22 HP9
                NEED Q0MNO JO22 HP95
                """);
        assertEquals(2, list.requests().size());
        assertEquals(List.of(2, 3, 4, 5), list.refused().stream().map(ChaserList.Refused::line).toList());
        list.refused().forEach(refused -> assertTrue(refused.why().endsWith("."), refused.why()));
    }

    @Test
    void refusesAFileWithoutAnyRequest() {
        assertEquals(2, assertThrows(ReadException.class, () -> read("call,locator,squares\nnothing,here,atall\n")).line());
        assertThrows(ReadException.class, () -> read("call,locator,squares\n"));
        assertThrows(ReadException.class, () -> new SourceFileOf(new byte[] {0, 1, 2, (byte) 0xff}).list());
    }

    @Test
    void anImportTwiceIsAnImportOnce() throws ReadException {
        Event event = Fresh.event("List");
        EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());
        ChaserList list = read("NEED Q0ABC JO22 HP94\nNEED Q0DEF IO91 IP04\n");
        domain.getCommandStack().execute(ChaserImport.into(event, list).command(domain));
        assertEquals(2, event.getChaserList().size());
        assertTrue(ChaserImport.into(event, list).isEmpty());
        ChaserImport more = ChaserImport.into(event, read("NEED Q0ABC JO23 HP95\n"));
        assertEquals(1, more.changed().size());
        domain.getCommandStack().execute(more.command(domain));
        assertEquals(List.of("HP94", "HP95"), event.getChaserList().get(0).getSquares());
        assertEquals("JO23", event.getChaserList().get(0).getLocator());
        domain.getCommandStack().undo();
        assertEquals(List.of("HP94"), event.getChaserList().get(0).getSquares());
        domain.getCommandStack().undo();
        assertEquals(0, event.getChaserList().size());
    }

    private record SourceFileOf(byte[] bytes) {

        ChaserList list() throws ReadException {
            return ChaserList.read(new SourceFile("list.txt", bytes));
        }
    }

    private static ChaserList read(String text) throws ReadException {
        return new SourceFileOf(text.getBytes(StandardCharsets.UTF_8)).list();
    }

    private static Set<String> squares(ChaserList list, int index) {
        return list.requests().get(index).squares().stream().map(Square::name).collect(Collectors.toSet());
    }
}
