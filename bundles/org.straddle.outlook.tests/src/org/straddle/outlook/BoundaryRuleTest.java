package org.straddle.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.GeodesicRay;
import org.straddle.grid.Square;
import org.straddle.model.Site;

/** The boundary rule of the square awards, as published from 2008 to 2011: parts in every square, 20 ft, evidence. */
class BoundaryRuleTest {

    private final World world = new World();

    private BoundaryRule rule(double latitudeDeg, double longitudeDeg, String squares) {
        world.event.getPolicies().setStationSpanM(20);
        return BoundaryRule.of(world.outlook(), world.site(latitudeDeg, longitudeDeg, squares)).orElseThrow();
    }

    private static List<String> named(BoundaryRule rule) {
        return rule.parts().stream().map(part -> part.name() + " " + part.square()).toList();
    }

    @ParameterizedTest
    @CsvSource({"64.5,-20,HP94 IP04,west end HP94,east end IP04", "64,-21,HP93 HP94,north end HP94,south end HP93",
        "10.5,180,AK00 RK90,west end RK90,east end AK00"})
    void eachEndOfALineHasItsSquare(double latitudeDeg, double longitudeDeg, String squares, String first, String second) {
        assertEquals(List.of(first, second), named(rule(latitudeDeg, longitudeDeg, squares)));
    }

    @Test
    void eachPartOfACornerHasItsSquare() {
        BoundaryRule corner = rule(64, -20, "IP04 HP93 HP94 IP03");
        assertEquals(List.of("north-west part HP94", "north-east part IP04", "south-west part HP93", "south-east part IP03"),
                named(corner));
        assertEquals(20 / (2 * Math.sqrt(2)), corner.parts().get(0).awayM(), 1e-12);
    }

    /** Second witness: walking from the corner to each part ends in the square that is named. */
    @Test
    void whoWalksToAPartStandsInItsSquare() {
        List<StationPart> parts = rule(64, -20, "IP04 HP93 HP94 IP03").parts();
        assertTrue(parts.size() > 1, parts.toString());
        for (StationPart part : parts) {
            GeoPosition there = GeodesicRay.from(new GeoPosition(64, -20), Math.toDegrees(Math.atan2(part.eastM(), part.northM())))
                    .pointAt(Math.hypot(part.eastM(), part.northM()));
            assertEquals(part.square(), Square.of(there), part.name());
        }
    }

    @Test
    void twentyFeetOnTheDisplay() {
        assertEquals(6.096, BoundaryRule.LARGEST_DISPLAYED_ERROR_M, 1e-12);
        Site site = world.site(64.5, -20, "HP94 IP04");
        site.setMarkErrorM(6.09);
        assertTrue(BoundaryRule.of(world.outlook(), site).orElseThrow().markSuffices());
        site.setMarkErrorM(6.1);
        assertFalse(BoundaryRule.of(world.outlook(), site).orElseThrow().markSuffices());
    }

    @Test
    void saysWhereToStandAndWhatToProve() {
        BoundaryRule line = rule(64.5, -20, "HP94 IP04");
        assertEquals("Set up straight across 20°W, the middle on it: west end in HP94, east end in IP04, each at least 10.0 m from"
                + " the line.", line.where());
        String evidence = String.join(" ", line.evidence());
        assertTrue(evidence.contains("display legible") && evidence.contains("20 ft (6.0 m)") && evidence.contains("WGS 84"), evidence);
    }

    @Test
    void withinOneSquareNothingIsToBeProved() {
        assertEquals(Optional.empty(), BoundaryRule.of(world.outlook(), world.site(64.5, -20.5, "HP94")));
        assertEquals(Optional.empty(), BoundaryRule.of(world.outlook(), world.site(64.5, -20.5, "HP94 IP05")), "they do not meet");
    }
}
