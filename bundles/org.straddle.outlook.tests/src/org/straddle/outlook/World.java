package org.straddle.outlook;

import java.time.Instant;
import java.util.List;

import org.straddle.model.Bird;
import org.straddle.model.BirdElements;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.HorizonPoint;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;

/** An event of sites and low birds, without people's papers, for tests. */
final class World {

    static final Instant MORNING = Instant.parse("2031-06-21T06:00:00Z");
    static final Instant EVENING = Instant.parse("2031-06-21T22:00:00Z");

    final Event event = Fresh.event("World");

    World() {
        event.setZone("Atlantic/Reykjavik");
        day(MORNING, EVENING);
    }

    void day(Instant from, Instant until) {
        Team team = Fresh.team();
        TeamDay day = Fresh.teamDay(from, until);
        team.getDays().add(day);
        event.getTeams().add(team);
    }

    /** @param squares parted by blanks */
    Site site(double latitudeDeg, double longitudeDeg, String squares) {
        Site site = Fresh.site();
        site.setName("Site " + (event.getSites().size() + 1));
        site.setLatitudeDeg(latitudeDeg);
        site.setLongitudeDeg(longitudeDeg);
        if (!squares.isEmpty()) {
            site.getSquares().addAll(List.of(squares.split(" ")));
        }
        event.getSites().add(site);
        return site;
    }

    static void mask(Site site, double azimuthDeg, double elevationDeg) {
        HorizonPoint point = StraddleFactory.eINSTANCE.createHorizonPoint();
        point.setAzimuthDeg(azimuthDeg);
        point.setElevationDeg(elevationDeg);
        site.getHorizon().add(point);
    }

    Bird bird(String name, BirdElements... sets) {
        Bird bird = Fresh.bird();
        bird.setName(name);
        bird.getElementSets().addAll(List.of(sets));
        event.getBirds().add(bird);
        return bird;
    }

    /** An invented orbit some 700 km up that crosses the poles. */
    static BirdElements low(Instant epoch, double meanAnomalyDeg) {
        BirdElements elements = StraddleFactory.eINSTANCE.createBirdElements();
        elements.setCatalogueNumber(90001);
        elements.setEpoch(epoch);
        elements.setMeanMotionRevPerDay(14.6);
        elements.setEccentricity(0.001);
        elements.setInclinationDeg(88);
        elements.setMeanAnomalyDeg(meanAnomalyDeg);
        return elements;
    }

    Outlook outlook() {
        return Outlook.of(event, null);
    }
}
