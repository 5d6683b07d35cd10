package org.straddle.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;

/** A kit with a lamp and a rope in the day bag, the rope's spare in none, and a second kit. */
class MovingTest {

    private final EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());
    private final Event event = Fresh.event("Midsummer");
    private final Kit kit = kit("North");
    private final Kit other = kit("South");
    private final KitItem lamp = item("lamp", "day bag");
    private final KitItem rope = item("rope", " Day bag ");
    private final KitItem spare = item("second rope", null);

    @BeforeEach
    void twoKits() {
        spare.setSpareFor(rope);
        event.getKits().addAll(List.of(other, kit));
    }

    private static Kit kit(String name) {
        Kit kit = Fresh.kit();
        kit.setName(name);
        return kit;
    }

    private KitItem item(String name, String bag) {
        KitItem item = Fresh.kitItem();
        item.setName(name);
        item.setBag(bag);
        kit.getItems().add(item);
        return item;
    }

    private void move(Moving to, KitItem... items) {
        domain.getCommandStack().execute(to.command(domain, "Move", List.of(items)));
    }

    @Test
    void placesAreTheBagsNoBagAndTheOtherKits() {
        List<Moving> places = Moving.placesFrom(kit);
        assertEquals(List.of(new Moving(kit, Optional.of("day bag")), new Moving(kit, Optional.of("")), new Moving(other, Optional.empty())),
                places);
        assertEquals(List.of(lamp, rope), places.get(0).content());
        assertEquals(List.of(spare), places.get(1).content());
        assertEquals(List.of(spare), places.get(0).moved(List.of(lamp, rope, spare)), "the others are there already");
    }

    @Test
    void intoABagAndOutOfIt() {
        move(new Moving(kit, Optional.of("box")), lamp, spare);
        assertEquals(List.of("box", " Day bag ", "box"), kit.getItems().stream().map(KitItem::getBag).toList());
        domain.getCommandStack().undo();
        assertEquals("day bag", lamp.getBag());
        assertNull(spare.getBag());
        move(new Moving(kit, Optional.of("")), lamp);
        assertNull(lamp.getBag());
    }

    @Test
    void intoAnotherKitWithTheirBagAndWhatTheyStandInFor() {
        move(new Moving(other, Optional.empty()), rope, spare);
        assertEquals(List.of(rope, spare), other.getItems());
        assertEquals(List.of(lamp), kit.getItems());
        assertEquals(" Day bag ", rope.getBag());
        assertSame(rope, spare.getSpareFor());
        domain.getCommandStack().undo();
        assertEquals(List.of(lamp, rope, spare), kit.getItems(), "in their old places");
        assertEquals(List.of(), other.getItems());
    }
}
