package org.straddle.ui.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.KitSource;
import org.straddle.model.Role;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Turn;
import org.straddle.model.WorkMode;
import org.straddle.outlook.Outlook;

/** One team with one of everything and one turn on an FM bird: each of the four pieces stops the work by failing alone. */
class WeakPointsTest {

    private final Event event = Fresh.event("Midsummer", "UTC", LocalDate.parse("2031-06-22"), LocalDate.parse("2031-06-22"));
    private final Team team = Fresh.team();
    private final Kit kit = Fresh.kit();
    private final Kit stock = Fresh.kit();

    @BeforeEach
    void plan() {
        team.setName("North");
        team.setNumber(1);
        team.getKits().add(kit);
        stock.setSource(KitSource.CLUB_STOCK);
        event.getTeams().add(team);
        event.getKits().addAll(List.of(kit, stock));
        Bird bird = Fresh.bird();
        bird.setName("Tern");
        bird.setMode(WorkMode.FM);
        event.getBirds().add(bird);
        Site site = Fresh.site();
        site.setName("Old Pier");
        site.setLatitudeDeg(50.5);
        site.setLongitudeDeg(0.5);
        event.getSites().add(site);
        Stop stop = Fresh.stop(team, site, Instant.parse("2031-06-22T10:00:00Z"), Instant.parse("2031-06-22T11:00:00Z"));
        Turn turn = Fresh.turn(bird, Instant.parse("2031-06-22T10:20:00Z"), Instant.parse("2031-06-22T10:30:00Z"));
        stop.getTurns().add(turn);
        event.getPlan().getStops().add(stop);
        item(kit, "rig", Role.RADIO);
        item(kit, "cable", Role.FEEDLINE);
        item(kit, "battery", Role.POWER);
        item(kit, "beam", Role.ANTENNA);
    }

    private static KitItem item(Kit kit, String name, Role role) {
        KitItem item = Fresh.kitItem(name, role);
        kit.getItems().add(item);
        return item;
    }

    private WeakPoints points() {
        return WeakPoints.of(team, Outlook.of(event, null));
    }

    private WeakPoints.Line fm() {
        return points().lines().get(0);
    }

    @Test
    void everyPieceIsAWeakPointAndNothingHelps() {
        assertEquals("One way of working is planned; 4 items stop one or more by failing alone.", points().summary());
        assertTrue(fm().what().startsWith("FM"), fm().what());
        assertTrue(fm().what().endsWith("4 items stop it"), fm().what());
        assertEquals(WeakPoints.Weight.WEAK, fm().weight());
        assertEquals(List.of("“battery” alone", "“beam” alone", "“cable” alone", "“rig” alone"),
                fm().parts().stream().map(WeakPoints.Line::what).sorted().toList());
        fm().parts().forEach(part -> {
            assertEquals("No piece of club stock or on the shopping list helps", part.help());
            assertEquals(Optional.empty(), part.fix());
        });
    }

    @Test
    void aPieceOfStockIsOneStepAndOneToBuyIsNamed() {
        item(stock, "spare rig", Role.RADIO);
        WeakPoints.Line rig = fm().parts().stream().filter(part -> part.what().equals("“rig” alone")).findFirst().orElseThrow();
        assertTrue(rig.fix().isPresent());
        assertEquals(rig.fix().get().label(), rig.help());
        assertTrue(rig.help().contains("spare rig"), rig.help());
        stock.setSource(KitSource.SHOPPING_LIST);
        rig = fm().parts().stream().filter(part -> part.what().equals("“rig” alone")).findFirst().orElseThrow();
        assertEquals(Optional.empty(), rig.fix());
        assertEquals("Buy “spare rig” from the shopping list", rig.help());
    }

    /** Two of each but the antenna: one single point is left, and pairs of the others are known. */
    @Test
    void whatIsThereTwiceIsNoWeakPoint() {
        kit.getItems().stream().filter(item -> item.getRole() != Role.ANTENNA).forEach(item -> item.setCount(2));
        assertEquals("One way of working is planned; one item stops one or more by failing alone.", points().summary());
        assertEquals(List.of("“beam” alone"), fm().parts().stream().map(WeakPoints.Line::what).filter(what -> what.endsWith("alone")).toList());
        assertEquals(List.of("two pieces of “battery”", "two pieces of “cable”", "two pieces of “rig”"),
                fm().parts().stream().filter(part -> part.weight() == WeakPoints.Weight.KNOWN).map(WeakPoints.Line::what).sorted().toList());
        kit.getItems().get(3).setCount(2);
        assertEquals(WeakPoints.Weight.GOOD, fm().weight());
    }

    @Test
    void workThatCannotBeDoneSaysWhatIsMissing() {
        kit.getItems().remove(3);
        assertTrue(points().summary().endsWith("; one cannot be done."), points().summary());
        assertTrue(fm().what().contains("Missing: an antenna"), fm().what());
        assertEquals(WeakPoints.Weight.WEAK, fm().weight());
    }

    @Test
    void withoutAPlanThereIsNothingToSay() {
        event.getPlan().getStops().clear();
        assertTrue(points().summary().startsWith("No work is planned"), points().summary());
        assertFalse(points().lines().stream().anyMatch(line -> line.weight() == WeakPoints.Weight.WEAK), points().lines().toString());
    }
}
