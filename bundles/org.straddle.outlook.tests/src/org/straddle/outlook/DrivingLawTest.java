package org.straddle.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.model.Base;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Site;

/** Which country's rules bind a day. The event allows 300 min and asks for a break after 120 min. */
class DrivingLawTest {

    private final Event event = Fresh.event("Border");
    private final Site west = site(-20.5);
    private final Site east = site(-19.5);
    private final Base home = Fresh.base();

    private Site site(double longitudeDeg) {
        Site site = Fresh.site();
        site.setLatitudeDeg(64.5);
        site.setLongitudeDeg(longitudeDeg);
        event.getSites().add(site);
        return site;
    }

    private Jurisdiction country(String name, double limitMinutes, double breakAfterMinutes, String... squares) {
        Jurisdiction country = Fresh.jurisdiction();
        country.setName(name);
        country.getSquares().addAll(List.of(squares));
        country.setDrivingLimitMinutes(limitMinutes);
        country.setBreakAfterMinutes(breakAfterMinutes);
        event.getJurisdictions().add(country);
        return country;
    }

    private DrivingLaw law(Identified... places) {
        return Outlook.of(event, null).drivingLaw(List.of(places));
    }

    @Test
    void withoutACountryTheEventDecides() {
        country("Elsewhere", 10, 10, "JO20");
        country("Nothing entered", 0, 0, "HP94");
        country("Impossible", 1e9, -5, "HP94");
        country("No number", Double.NaN, Double.NaN, "HP94");
        country("More lenient", 600, 240, "HP94");
        assertEquals(new DrivingLaw(Duration.ofMinutes(300), Optional.empty(), Duration.ofMinutes(120), Optional.empty()), law(west, east));
    }

    @Test
    void theStrictestOfTheCountriesBindsEachFigureByItself() {
        Jurisdiction brief = country("Short days", 200, 0, "HP94");
        Jurisdiction rests = country("Rests", 250, 90, "IP04");
        assertEquals(new DrivingLaw(Duration.ofMinutes(200), Optional.of(brief), Duration.ofMinutes(90), Optional.of(rests)), law(west, east));
        assertEquals(Duration.ofMinutes(250), law(east).limit());
        assertEquals(Duration.ofMinutes(120), law(west).breakAfter());
    }

    @Test
    void aBaseCountsLikeASite() {
        home.setLatitudeDeg(64.5);
        home.setLongitudeDeg(-20.5);
        event.getBases().add(home);
        Jurisdiction strict = country("Home country", 100, 0, "HP94");
        assertSame(strict, law(home, east).limitOf().orElseThrow());
    }

    /** About 54.3 km of road at 60 km/h: less than an hour. */
    @Test
    void aDriveTakesTheBreaksOfTheCountriesAtItsEnds() {
        country("Rests", 0, 20, "IP04");
        event.getPolicies().setDetourFactor(1);
        Road road = Outlook.of(event, null).road(west, east).orElseThrow();
        assertEquals(48, road.driving().toMinutes());
        assertEquals(Duration.ofMinutes(30), road.breaks(), "two of a quarter of an hour");
    }

    @Test
    void aBreakIsDueOnlyBeforeMoreDriving() {
        DrivingLaw law = law();
        assertEquals(0, law.breaks(Duration.ZERO));
        assertEquals(0, law.breaks(Duration.ofMinutes(120)));
        assertEquals(1, law.breaks(Duration.ofMinutes(121)));
        assertEquals(2, law.breaks(Duration.ofMinutes(360)));
    }
}
