package org.straddle.kit.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.exchange.ReadException;
import org.straddle.kit.InCar;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;
import org.straddle.outlook.itinerary.Itinerary;

/** A team with a lamp and a rope, and one stop. */
class TickImportTest {

    private static final String HEAD = "id,item,tick,stop,by,at\n";

    private final EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());
    private final Event event = Fresh.event("Midsummer");
    private final Team team = Fresh.team();
    private final KitItem lamp = item("lamp", "a:1");
    private final KitItem rope = item("rope", "r2");
    private final Stop stop = Fresh.stop();

    @BeforeEach
    void plan() {
        Kit kit = Fresh.kit();
        kit.getItems().addAll(List.of(lamp, rope));
        event.getKits().add(kit);
        team.getKits().add(kit);
        event.getTeams().add(team);
        Site site = Fresh.site();
        site.setName("Old Pier");
        event.getSites().add(site);
        stop.setId("s9");
        stop.setTeam(team);
        stop.setSite(site);
        stop.setArrival(Instant.parse("2031-06-20T10:00:00Z"));
        stop.setDeparture(Instant.parse("2031-06-20T12:00:00Z"));
        event.getPlan().getStops().add(stop);
    }

    private static KitItem item(String name, String id) {
        KitItem item = Fresh.kitItem();
        item.setName(name);
        item.setId(id);
        return item;
    }

    private TickImport read(String lines) throws ReadException {
        return TickImport.into(event, KitFile.read("ticks.csv", (HEAD + lines).getBytes(StandardCharsets.UTF_8)));
    }

    private void take(String lines) throws ReadException {
        domain.getCommandStack().execute(read(lines).command(domain));
    }

    /** The page writes ids with hyphens for all but letters, digits and hyphens. */
    @Test
    void whoTickedWhatAndWhenComesBackAndOneUndoTakesItOut() throws ReadException {
        take("""
                "a-1","lamp",packed,"","Q0AAR",2031-06-19T18:00:00Z
                "a-1","lamp",car,"s9","Q0AAB",2031-06-20T11:55:00Z
                "r2","rope",returned,"","Ann, of the base",2031-06-21T09:00:00Z
                """);
        assertEquals("Q0AAR", lamp.getTick().getBy());
        assertEquals(Instant.parse("2031-06-19T18:00:00Z"), lamp.getTick().getAt());
        assertEquals("Ann, of the base", rope.getReturned().getBy());
        assertEquals(stop, lamp.getInCar().get(0).getStop());
        assertEquals("Q0AAB", lamp.getInCar().get(0).getBy());
        assertEquals(List.of("In the car again at Old Pier: 1 of 2, the last by Q0AAB. Nobody ticked: rope."),
                InCar.of(team, Itinerary.of(event)).stream().map(InCar::sentence).toList());
        domain.getCommandStack().undo();
        assertNull(lamp.getTick());
        assertEquals(List.of(), lamp.getInCar());
        assertEquals(List.of(), InCar.of(team, Itinerary.of(event)));
    }

    @Test
    void theLaterTickCountsAndTheSameOneIsKnown() throws ReadException {
        String noon = "r2,,car,s9,Q0AAR,2031-06-20T12:00:00Z\n";
        take(noon);
        TickImport again = read(noon);
        assertTrue(again.isEmpty());
        assertEquals("0 ticks taken over, 0 cleared, 1 known already.", again.summary());
        assertTrue(read("r2,,car,s9,Q0AAB,2031-06-20T11:00:00Z\n").isEmpty(), "an older one");
        take("r2,,car,s9,Q0AAB,2031-06-20T13:00:00Z\n");
        assertEquals(1, rope.getInCar().size(), "in place of the old one");
        assertEquals("Q0AAB", rope.getInCar().get(0).getBy());
        take("r2,,car,s9,,-\n");
        assertEquals(List.of(), rope.getInCar());
        assertTrue(read("r2,,car,s9,,-\n").isEmpty(), "nothing to clear");
    }

    @Test
    void wrongLinesAreNamedAndNothingIsTaken() throws ReadException {
        TickImport found = read("""
                r2,,packed,,Q0AAR,2031-06-19T18:00:00Z
                zz,,packed,,Q0AAR,2031-06-19T18:00:00Z
                r2,,lost,,Q0AAR,2031-06-19T18:00:00Z
                r2,,car,nowhere,Q0AAR,2031-06-19T18:00:00Z
                r2,,checked,,,2031-06-19T18:00:00Z
                r2,,tested,,Q0AAR,yesterday
                r2,,packed,,Q0AAB,2031-06-19T19:00:00Z
                """);
        assertEquals(List.of(3, 4, 5, 6, 7, 8), found.refused().stream().map(TickImport.Refused::line).toList());
        assertEquals("“lost” is no tick. Ticks are: packed, checked, tested, returned and car.", found.refused().get(1).why());
        assertEquals("Line 2 says this tick already.", found.refused().get(5).why());
        assertThrows(IllegalStateException.class, () -> found.command(domain));
        assertNull(rope.getTick());
    }

    @Test
    void aTableOfOtherThingsIsRefusedByItsColumns() throws ReadException {
        TickImport found = TickImport.into(event, KitFile.read("kits.csv", "item,count\nrope,1\n".getBytes(StandardCharsets.UTF_8)));
        assertEquals("These columns are missing: id, tick, stop, by and at. A phone page gives them out.", found.refused().get(0).why());
    }

    @Test
    void aTickGoesWithItsStop() {
        lamp.getInCar().add(StraddleFactory.eINSTANCE.createStopTick());
        assertEquals(List.of(), InCar.of(team, Itinerary.of(event)), "of a stop that is gone");
    }
}
