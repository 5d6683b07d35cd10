package org.straddle.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.KitSource;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;

class GoingBackTest {

    @Test
    void lentStockAndWhatHasAnOwnerGoesBackUntilItIsTicked() {
        Event event = Fresh.event("Midsummer");
        event.setClub("Skerry Radio Circle");
        Team team = Fresh.team();
        Kit own = Fresh.kit();
        Kit stock = Fresh.kit();
        stock.setSource(KitSource.CLUB_STOCK);
        event.getTeams().add(team);
        event.getKits().addAll(List.of(own, stock));
        team.getKits().add(own);
        item(own, "rope", null, 1);
        item(own, "lamp", "Ida", 2);
        item(stock, "mast", null, 1).setLentTo(team);
        item(stock, "not lent", null, 1);
        assertEquals(List.of("Goes back to Ida: 2 × lamp.", "Goes back to Skerry Radio Circle: 1 × mast."), lines(team));
        stock.getItems().get(0).setReturned(StraddleFactory.eINSTANCE.createTick());
        assertEquals(List.of("Goes back to Ida: 2 × lamp.", "Is back with Skerry Radio Circle: 1 × mast."), lines(team));
    }

    private static List<String> lines(Team team) {
        return GoingBack.of(team).stream().map(GoingBack::sentence).toList();
    }

    private static KitItem item(Kit kit, String name, String owner, int count) {
        KitItem item = Fresh.kitItem();
        item.setName(name);
        item.setOwner(owner);
        item.setCount(count);
        kit.getItems().add(item);
        return item;
    }
}
