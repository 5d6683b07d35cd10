package org.straddle.demo;

import java.util.List;

import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Region;

/** Where the chasers of the demo live: real coasts, coarsely outlined, under invented names and with invented shares. */
final class DemoRegions {

    private final Event event;

    private DemoRegions(Event event) {
        this.event = event;
    }

    static void addTo(Event event) {
        DemoRegions regions = new DemoRegions(event);
        regions.region("Heather and Firths (demo)", 45).setOutline("POLYGON((-7.6 56.5, -7.6 58.6, -3 59.4, -0.8 60.8, "
                + "-1.3 57.5, -2 57.3, -3.5 56.2, -5.8 55.8, -7.6 56.5))");
        regions.region("Fjord Rim (demo)", 35).setOutline("POLYGON((4.7 59, 4.8 61.9, 8.5 63.6, 10.5 63.4, 8 61, "
                + "8.5 58.2, 6.8 57.9, 5.3 58.6, 4.7 59))");
        regions.region("Middle Isles (demo)", 15).getSquares().addAll(List.of("IP61", "IP62"));
        regions.region("Ice Margin (demo)", 5).setOutline("POLYGON((-44 59.8, -41.5 63.5, -35.5 65.9, -25.5 69, -27 69.5, "
                + "-37.5 66.8, -43 64, -46 60.2, -44 59.8))");
    }

    private Region region(String name, double sharePercent) {
        Region region = DemoIdentity.named(Fresh.region(), "region/" + name);
        region.setName(name);
        region.setSharePercent(sharePercent);
        event.getRegions().add(region);
        return region;
    }
}
