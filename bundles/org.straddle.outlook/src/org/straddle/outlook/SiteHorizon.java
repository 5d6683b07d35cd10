package org.straddle.outlook;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;

import org.straddle.model.HorizonPoint;
import org.straddle.model.Site;
import org.straddle.sky.Horizon;
import org.straddle.words.Catalogue;

/**
 * The horizon mask of a site as written down: no points mean a free view. Where two points share an
 * azimuth the higher counts; a point that cannot be is left out and told.
 */
final class SiteHorizon {

    private static final Catalogue TEXTS = Catalogue.of(SiteHorizon.class);

    private SiteHorizon() {
    }

    static Horizon of(Site site, Consumer<Trouble> troubles) {
        Map<Double, Horizon.Point> byAzimuth = new TreeMap<>();
        for (HorizonPoint written : site.getHorizon()) {
            try {
                double azimuthDeg = written.getAzimuthDeg() == 360 ? 0 : written.getAzimuthDeg();
                byAzimuth.merge(azimuthDeg, new Horizon.Point(azimuthDeg, written.getElevationDeg()),
                        (a, b) -> a.elevationDeg() >= b.elevationDeg() ? a : b);
            } catch (IllegalArgumentException e) {
                troubles.accept(new Trouble(Trouble.Kind.HORIZON, site, TEXTS.text("siteHorizon.horizonHasPoint",
                        "site", Called.of(site), "azimuthDeg", written.getAzimuthDeg(),
                        "elevationDeg", written.getElevationDeg())));
            }
        }
        return byAzimuth.isEmpty() ? Horizon.flat(0) : new Horizon(List.copyOf(byAzimuth.values()));
    }
}
