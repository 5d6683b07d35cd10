package org.straddle.kit.team;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneOffset;
import java.util.List;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.FunctionKind;
import org.straddle.model.ItemFunction;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.KitSource;
import org.straddle.model.Role;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.WorkMode;
import org.straddle.outlook.PolicyFigures;
import org.straddle.outlook.itinerary.Itinerary;

/** One team, one turn of ten minutes on a bird that goes up on 2m and comes down on 70cm. */
class ResilienceTest {

    private final Event event = Fresh.event("Midsummer");
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
        bird.setUplink(StraddleFactory.eINSTANCE.createLink());
        bird.getUplink().setLowMhz(145.9);
        bird.setDownlink(StraddleFactory.eINSTANCE.createLink());
        bird.getDownlink().setLowMhz(435.2);
        event.getBirds().add(bird);
        OneTurn.plan(event, team, Fresh.site(), bird);
        item(kit, "rig", Role.RADIO);
        item(kit, "cable", Role.FEEDLINE);
        item(kit, "battery", Role.POWER);
    }

    @Test
    void bandsAreSeenAndSaid() {
        gives(item(kit, "whip", Role.ANTENNA), FunctionKind.ANTENNA, "2 m");
        assertEquals("The kit cannot do FM (up 2m, down 70cm). Missing: an antenna for 70cm.", lines().get(0));
        item(kit, "beam", Role.ANTENNA);
        assertTrue(lines().get(0).startsWith("If “"), lines().get(0));
    }

    @Test
    void aSinglePointNamesThePieceOfStock() {
        item(kit, "beam", Role.ANTENNA);
        needs(kit.getItems().get(0), FunctionKind.PUSH_TO_TALK, "left");
        gives(item(kit, "switch 1", Role.AUDIO), FunctionKind.PUSH_TO_TALK, "").getFunctions().get(0).setFit("left");
        KitItem four = gives(item(stock, "switch 4", Role.AUDIO), FunctionKind.PUSH_TO_TALK, "");
        four.getFunctions().get(0).setFit("Left");
        String line = "If “switch 1” fails, you lose FM (up 2m, down 70cm): pack “switch 4” from club stock.";
        assertTrue(lines().contains(line), lines()::toString);
        assertTrue(lines().contains("If “beam” fails, you lose FM (up 2m, down 70cm): no single item in club stock or on the"
                + " shopping list replaces it."), lines()::toString);
        four.setLentTo(team);
        assertTrue(lines().stream().noneMatch(text -> text.startsWith("If “switch 1” fails")), lines()::toString);
        assertTrue(Inventory.carriedBy(team).contains(four));
    }

    @Test
    void stockThatAnotherTeamHasIsNotOffered() {
        Team other = Fresh.team();
        event.getTeams().add(other);
        item(stock, "second cable", Role.FEEDLINE).setLentTo(other);
        assertEquals(List.of(), Inventory.of(team).offered());
    }

    @Test
    void theAdditionHasPriceAndWeight() {
        item(kit, "beam", Role.ANTENNA);
        for (Role role : List.of(Role.RADIO, Role.ANTENNA, Role.FEEDLINE, Role.POWER)) {
            KitItem spare = item(stock, "spare " + role.getLiteral(), role);
            spare.setWeightKg(1.5);
        }
        assertTrue(lines().stream().anyMatch(line -> line.startsWith("The cheapest way to survive any single failure:")
                && line.endsWith("Price 0.00, weight 6.0 kg.")), lines()::toString);
    }

    /** 14 W for 10 min, 2.33 Wh, of 80 Wh; the second battery is a spare and counts for nothing. */
    @Test
    void energyOfTheDay() {
        KitItem battery = kit.getItems().get(2);
        battery.setStoresWh(100);
        battery.setCount(2);
        battery.setChemistry(org.straddle.model.Chemistry.LITHIUM_IRON_PHOSPHATE);
        kit.getItems().get(0).setDrawsW(14);
        assertEquals(List.of("Energy on 22 Jun 2031, the station’s batteries: 80 Wh in the morning, 2 Wh planned, 78 Wh left."),
                energy());
        battery.setStoresWh(2);
        assertEquals(List.of("Energy on 22 Jun 2031, the station’s batteries: 2 Wh in the morning, 2 Wh planned. 0.7 Wh are missing.",
                "“battery” runs out during Tern at 10:20.", "Its spare batteries give 2 Wh more: change to one in time."), energy());
    }

    private List<String> energy() {
        return TeamEnergy.of(team, Itinerary.of(event), PolicyFigures.of(event.getPolicies()), ZoneOffset.UTC).stream()
                .flatMap(supply -> supply.lines().stream()).toList();
    }

    private List<String> lines() {
        return new ResilienceText(Resilience.of(team, Itinerary.of(event))).lines();
    }

    private static KitItem item(Kit kit, String name, Role role) {
        KitItem item = Fresh.kitItem(name, role);
        kit.getItems().add(item);
        return item;
    }

    private static KitItem gives(KitItem item, FunctionKind kind, String band) {
        item.getFunctions().add(function(kind, band));
        return item;
    }

    private static void needs(KitItem item, FunctionKind kind, String fit) {
        ItemFunction need = function(kind, "");
        need.setFit(fit);
        item.getNeeds().add(need);
    }

    private static ItemFunction function(FunctionKind kind, String band) {
        ItemFunction function = StraddleFactory.eINSTANCE.createItemFunction();
        function.setKind(kind);
        if (!band.isEmpty()) {
            function.getBands().add(band);
        }
        return function;
    }
}
