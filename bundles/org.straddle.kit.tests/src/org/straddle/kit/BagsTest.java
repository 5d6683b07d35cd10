package org.straddle.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.model.Chemistry;
import org.straddle.model.Consumable;
import org.straddle.model.KitItem;
import org.straddle.model.StraddleFactory;

/** Watt hours as airlines and aviation authorities print them after the IATA rules: 100 and 160. */
class BagsTest {

    private final List<KitItem> items = KitNotation
            .team("radio rig 2kg; power small 100Wh 1kg; power middle 100.5Wh; power large x2 161Wh 3kg")
            .getKits().get(0).getItems();

    @Test
    void bagsAndWhatNobodyWeighed() {
        items.get(0).setBag("blue");
        items.get(2).setBag("blue ");
        items.get(3).setBag("red");
        assertEquals(List.of("Bag “blue”: 2 pieces, 2.0 kg, and 1 item that nobody weighed.", "Bag “red”: 2 pieces, 6.0 kg."),
                Bags.lines(items).subList(0, 2));
    }

    @Test
    void cellsAddUp() {
        Consumable cells = StraddleFactory.eINSTANCE.createConsumable();
        cells.setName("AA cell");
        cells.setCount(4);
        items.get(3).getConsumables().add(cells);
        assertEquals("Used up: 8 × AA cell. Take at least as many again.", Bags.lines(items).get(0));
    }

    @Test
    void batteriesThatAnAirlineAsksAbout() {
        List<String> lines = Bags.lines(items);
        assertEquals(3, lines.size());
        assertTrue(lines.get(2).contains("into the cabin"), lines.get(2));
        assertEquals("middle stores 101 Wh", said(lines.get(0)));
        assertEquals("large stores 161 Wh", said(lines.get(1)));
        items.forEach(item -> item.setChemistry(Chemistry.LEAD_ACID));
        assertEquals(List.of(), Bags.lines(items));
    }

    /** 21 spares are one too many for a passenger; so are three spares over 100 Wh, and 16 radios with a battery inside. */
    @Test
    void whatOnePassengerMayNotCarryAlone() {
        assertEquals(List.of(), shared("power small x20 100Wh; power middle x0 150Wh; radio rig x15 10Wh 5W"));
        assertEquals(1, shared("power small x21 100Wh").size());
        assertEquals(List.of(), shared("power middle x2 150Wh"));
        assertTrue(shared("power middle x3 150Wh").get(0).contains("3 spare lithium batteries (3 over 100 Wh) and 0 devices"));
        assertEquals(1, shared("radio rig x16 10Wh 5W").size());
    }

    private static List<String> shared(String kit) {
        return Bags.lines(KitNotation.team(kit).getKits().get(0).getItems()).stream().filter(line -> line.contains("share them out")).toList();
    }

    private static String said(String line) {
        return line.replaceAll("^If you fly: “(.*?)” (.*?) Wh\\..*", "$1 $2 Wh");
    }
}
