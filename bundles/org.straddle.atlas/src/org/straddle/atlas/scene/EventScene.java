package org.straddle.atlas.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.straddle.atlas.layer.LaidGrid;
import org.straddle.atlas.plane.PlanePoint;
import org.straddle.atlas.plane.Projector;
import org.straddle.drawing.TeamMark;
import org.straddle.grid.Boundary;
import org.straddle.grid.GeoPosition;
import org.straddle.grid.GridCorner;
import org.straddle.grid.GridLine;
import org.straddle.grid.Square;
import org.straddle.grid.Squares;
import org.straddle.model.Demand;
import org.straddle.model.Event;
import org.straddle.model.Region;
import org.straddle.model.Site;
import org.straddle.model.SiteKind;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;

/**
 * An event on its plane: what does not depend on how the map is zoomed. Things without a position are left out; the
 * findings tell of them.
 */
public record EventScene(List<SiteSpot> sites, List<BaseSpot> bases, List<DriveLine> drives, List<DemandSpot> demand,
        List<RegionShape> regions) {

    private static final Catalogue TEXTS = Catalogue.of(EventScene.class);

    /** Nothing on the map. */
    public static final EventScene EMPTY = new EventScene(List.of(), List.of(), List.of(), List.of(), List.of());

    public EventScene {
        sites = List.copyOf(sites);
        bases = List.copyOf(bases);
        drives = List.copyOf(drives);
        demand = List.copyOf(demand);
        regions = List.copyOf(regions);
    }

    /**
     * @param monitor may be null
     * @throws org.eclipse.core.runtime.OperationCanceledException soon after the monitor was cancelled
     */
    public static EventScene of(Outlook outlook, Projector projector, LaidGrid grid, Look look, IProgressMonitor monitor) {
        Event event = outlook.event();
        SubMonitor progress = SubMonitor.convert(monitor, TEXTS.text("scene.map"), event.getSites().size() + event.getTeams().size()
                + event.getDemands().size() + 1);
        List<SiteSpot> sites = new ArrayList<>();
        for (Site site : event.getSites()) {
            progress.split(1);
            if (outlook.isPlaced(site)) {
                sites.add(site(site, outlook, projector, look));
            }
        }
        List<BaseSpot> bases = event.getBases().stream().filter(outlook::isPlaced).map(base -> new BaseSpot(base.getId(),
                Naming.name(base), outlook.position(base), projector.plane().put(outlook.position(base)))).toList();
        List<DriveLine> drives = new ArrayList<>();
        for (Team team : event.getTeams()) {
            progress.split(1);
            drives.addAll(TeamDrives.of(team, outlook, projector, TeamMark.of(team.getNumber())));
        }
        List<DemandSpot> demand = new ArrayList<>();
        for (Demand share : event.getDemands()) {
            progress.split(1);
            demand(share, outlook, projector, grid).ifPresent(demand::add);
        }
        List<RegionShape> regions = event.getRegions().stream()
                .flatMap(region -> outlook.shape(region).map(shape -> region(region, shape, projector)).stream())
                .filter(region -> !region.outline().parts().isEmpty()).toList();
        return new EventScene(sites, bases, drives, demand, regions);
    }

    /** The box around sites and bases on the plane; null ({@link Envelope#isNull()}) without any. */
    public Envelope box() {
        Envelope box = new Envelope();
        sites.forEach(site -> box.expandToInclude(site.at().x(), site.at().y()));
        bases.forEach(base -> box.expandToInclude(base.at().x(), base.at().y()));
        if (box.isNull()) {
            demand.forEach(spot -> box.expandToInclude(spot.outline().box()));
        }
        return box;
    }

    public Optional<SiteSpot> site(String id) {
        return sites.stream().filter(site -> site.id().equals(id)).findFirst();
    }

    private static SiteSpot site(Site site, Outlook outlook, Projector projector, Look look) {
        List<TeamMark> teams = outlook.event().getPlan() == null ? List.of()
                : outlook.event().getPlan().getStops().stream().filter(stop -> stop.getSite() == site)
                        .map(Stop::getTeam).filter(team -> team != null).distinct()
                        .sorted(Comparator.comparingInt(Team::getNumber)).map(team -> TeamMark.of(team.getNumber())).toList();
        List<Square> squares = List.copyOf(outlook.squares(site));
        PlanePoint at = projector.plane().put(outlook.position(site));
        return new SiteSpot(site.getId(), Naming.name(site), kind(site.getKind(), squares), squares,
                outlook.position(site), at, teams, look.attention().apply(site));
    }

    /** What a site claims to be, with the way the claimed squares lie to each other. */
    public static SiteSpot.Kind kind(SiteKind claimed, List<Square> squares) {
        Optional<Boundary> meeting = Squares.meetingPlace(squares);
        return switch (claimed == null ? SiteKind.INSIDE : claimed) {
            case INSIDE -> SiteSpot.Kind.INSIDE;
            case CORNER -> SiteSpot.Kind.CORNER;
            case LINE -> meeting.filter(line -> line instanceof GridLine parallel && !parallel.isMeridian()).isPresent()
                    ? SiteSpot.Kind.SOUTH_NORTH
                    : meeting.filter(GridCorner.class::isInstance).isPresent() ? SiteSpot.Kind.CORNER
                            : SiteSpot.Kind.WEST_EAST;
        };
    }

    private static Optional<DemandSpot> demand(Demand share, Outlook outlook, Projector projector, LaidGrid grid) {
        return Square.named(share.getSquare()).filter(square -> outlook.demand(square) > 0)
                .map(square -> new DemandSpot(square, outlook.demand(square), grid.ring(square.locator()),
                        projector.plane().put(square.centre())))
                .filter(spot -> !spot.outline().parts().isEmpty());
    }

    private static RegionShape region(Region region, Geometry shape, Projector projector) {
        Coordinate inside = shape.getInteriorPoint().getCoordinate();
        return new RegionShape(projector.area(shape, Naming.name(region)),
                projector.plane().put(new GeoPosition(inside.y, Math.IEEEremainder(inside.x, 360))),
                region.getSharePercent() / 100);
    }
}
