package org.straddle.store;

import java.time.Instant;

import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.BirdElements;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Operator;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.Turn;

/** A small invented event with references from every file to every other that may have them. */
final class Example {

    private Example() {
    }

    static Event event() {
        Event event = Fresh.event("Midsummer");
        event.setZone("Atlantic/Reykjavik");
        Base base = Fresh.base();
        base.setName("Hut");
        base.setLatitudeDeg(64.1);
        base.setLongitudeDeg(-21.9);
        event.getBases().add(base);
        Operator operator = Fresh.operator();
        operator.setName("Ölafur Þ. Æsir (demo)");
        operator.setCallSign("Q0AAR");
        event.getOperators().add(operator);
        Kit kit = Fresh.kit();
        kit.setName("Grey box");
        KitItem radio = Fresh.kitItem();
        radio.setName("Radio");
        KitItem spare = Fresh.kitItem();
        spare.setName("Spare radio");
        spare.setSpareFor(radio);
        kit.getItems().add(radio);
        kit.getItems().add(spare);
        event.getKits().add(kit);
        Team team = Fresh.team();
        team.setName("East");
        team.setNumber(1);
        team.getOperators().add(operator);
        team.getKits().add(kit);
        TeamDay day = Fresh.teamDay(Instant.parse("2026-06-20T08:00:00Z"), Instant.parse("2026-06-20T20:00:00Z"), base, base);
        team.getDays().add(day);
        event.getTeams().add(team);
        Site site = site("Long Gravel Bank");
        event.getSites().add(site);
        event.getSites().add(site("Cairn"));
        event.getBirds().add(bird("Tern-1 (demo)", 900001));
        event.getBirds().add(bird("Fulmar-2 (demo)", 900002));
        Stop stop = Fresh.stop();
        stop.setTeam(team);
        stop.setSite(site);
        Turn turn = Fresh.turn(event.getBirds().get(0), Instant.parse("2026-06-20T10:02:00Z"),
                Instant.parse("2026-06-20T10:14:00Z"));
        stop.getTurns().add(turn);
        event.getPlan().getStops().add(stop);
        return event;
    }

    static Site site(String name) {
        Site site = Fresh.site();
        site.setName(name);
        site.setLatitudeDeg(64.2);
        site.setLongitudeDeg(-20);
        site.getSquares().add("HP94");
        site.getSquares().add("IP04");
        return site;
    }

    static Bird bird(String name, int number) {
        Bird bird = Fresh.bird();
        bird.setName(name);
        bird.setCatalogueNumber(number);
        return bird;
    }

    static BirdElements elements(String file) {
        BirdElements elements = StraddleFactory.eINSTANCE.createBirdElements();
        elements.setEpoch(Instant.parse("2026-06-19T00:00:00Z"));
        elements.setFile(file);
        return elements;
    }
}
