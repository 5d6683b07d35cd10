package org.straddle.outlook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.grid.Square;
import org.straddle.model.Bird;
import org.straddle.model.Region;
import org.straddle.model.Site;
import org.straddle.sky.Place;
import org.straddle.sky.Viewpoint;
import org.straddle.sky.Window;
import org.straddle.sky.prediction.Area;
import org.straddle.sky.prediction.AreaReach;
import org.straddle.sky.prediction.CommonView;
import org.straddle.words.Catalogue;

/**
 * Whom the passes of an event reach: the regions where chasers live, and single squares.
 *
 * <p>Somebody is reached while the bird stands above the site's mask here and above the event's
 * {@code reachElevationDeg} there; there is no mask for the far end, and nothing is said of power or
 * noise. The reach of a pass is the mean over its time of the share of chasers who have the bird up:
 * the chance that a chaser taken at random hears the pass at a moment taken at random. Regions that
 * cannot be used are left out and told by {@link Outlook#troubles()}.
 *
 * <p>Safe for use by many threads.
 */
public final class Reach {

    private static final Catalogue TEXTS = Catalogue.of(Reach.class);

    /**
     * How one pass reaches the regions, each share 0 to 1 of all chasers who live in them.
     *
     * @param mean     over the time of the pass: the reach of the pass
     * @param ever     who has the bird up at some time of it
     * @param byRegion the same for each region by itself, in the order of the event
     */
    public record PassReach(double mean, double ever, Map<Region, AreaReach> byRegion) {
    }

    private final Outlook outlook;
    private final Map<Region, Area> areas;
    private final double leastDeg;

    private Reach(Outlook outlook, Map<Region, Area> areas, double leastDeg) {
        this.outlook = outlook;
        this.areas = areas;
        this.leastDeg = leastDeg;
    }

    static Reach of(Outlook outlook, Map<Region, Area> areas) {
        return new Reach(outlook, areas, outlook.policies().reachElevationDeg());
    }

    /** The same with another elevation at the far end than the event's policy has, degrees, −30 to 90. */
    public Reach above(double elevationDeg) {
        if (!(elevationDeg >= -30 && elevationDeg <= 90)) {
            throw new IllegalArgumentException(TEXTS.text("reach.elevationLiesBetween", "elevationDeg", elevationDeg));
        }
        return new Reach(outlook, areas, elevationDeg);
    }

    /** Elevation that counts at the far end, degrees. */
    public double leastDeg() {
        return leastDeg;
    }

    /** The regions that can be used, in the order of the event. */
    public List<Region> regions() {
        return List.copyOf(areas.keySet());
    }

    /**
     * Where the chasers of a region live.
     *
     * @throws IllegalArgumentException unless it is one of {@link #regions()}
     */
    public Area area(Region region) {
        Area area = areas.get(region);
        if (area == null) {
            throw new IllegalArgumentException("the region is not one that can be used");
        }
        return area;
    }

    /** Whom a pass reaches; empty when the event has no regions with a share. */
    public Optional<PassReach> of(SitePass pass) {
        return of(pass, pass.pass().window());
    }

    /**
     * Whom a part of a pass reaches, such as a turn.
     *
     * @param part within the pass; what lies outside is cut off
     */
    public Optional<PassReach> of(SitePass pass, Window part) {
        Window during = pass.pass().window().intersection(part).orElse(null);
        double shares = areas.keySet().stream().mapToDouble(Reach::share).sum();
        if (during == null || !(shares > 0)) {
            return Optional.empty();
        }
        Map<Region, AreaReach> byRegion = new LinkedHashMap<>();
        double mean = 0;
        double ever = 0;
        for (Map.Entry<Region, Area> region : areas.entrySet()) {
            AreaReach reach = AreaReach.of(outlook.ephemeris(pass.pass()), during, region.getValue(), leastDeg);
            byRegion.put(region.getKey(), reach);
            mean += share(region.getKey()) / shares * reach.mean();
            ever += share(region.getKey()) / shares * reach.ever();
        }
        return Optional.of(new PassReach(mean, ever, Collections.unmodifiableMap(byRegion)));
    }

    /**
     * When the middle of a square can be worked from a site, in order: the bird stands above the site's mask, and
     * above {@link #leastDeg()} at both ends.
     */
    public List<CommonView> views(Site site, Bird bird, Square square) {
        return views(site, bird, Area.of(Place.of(square.centre().latitudeDeg(), square.centre().longitudeDeg())));
    }

    /**
     * The same for some place of a region.
     *
     * @throws IllegalArgumentException unless it is one of {@link #regions()}
     */
    public List<CommonView> views(Site site, Bird bird, Region region) {
        return views(site, bird, area(region));
    }

    private List<CommonView> views(Site site, Bird bird, Area there) {
        List<CommonView> views = new ArrayList<>();
        for (SitePass pass : outlook.passes(site, bird)) {
            Viewpoint here = new Viewpoint(outlook.place(site), outlook.horizon(site));
            views.addAll(CommonView.of(outlook.ephemeris(pass.pass()), here, there, leastDeg, pass.pass().window()));
        }
        return List.copyOf(views);
    }

    /** Share of all chasers, 0 to 1; what cannot be counts as none. */
    public static double share(Region region) {
        double share = region.getSharePercent() / 100;
        return share > 0 ? Math.min(1, share) : 0;
    }
}
