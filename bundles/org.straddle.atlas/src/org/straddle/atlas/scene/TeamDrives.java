package org.straddle.atlas.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.atlas.plane.Projector;
import org.straddle.drawing.TeamMark;
import org.straddle.grid.GeoPosition;
import org.straddle.model.Base;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;

/** The drives of a team: on each of its days from the base over the stops, in order of arrival, to the base. */
final class TeamDrives {

    /** A place on the way. */
    private record Halt(String name, GeoPosition position) {
    }

    private final Outlook outlook;
    private final Projector projector;
    private final TeamMark style;
    private final List<DriveLine> drives = new ArrayList<>();

    private TeamDrives(Outlook outlook, Projector projector, TeamMark style) {
        this.outlook = outlook;
        this.projector = projector;
        this.style = style;
    }

    static List<DriveLine> of(Team team, Outlook outlook, Projector projector, TeamMark style) {
        TeamDrives drives = new TeamDrives(outlook, projector, style);
        team.getDays().forEach(day -> drives.read(team, day));
        return drives.drives;
    }

    private void read(Team team, TeamDay day) {
        if (day.getFrom() == null || day.getUntil() == null || outlook.event().getPlan() == null) {
            return;
        }
        List<Halt> halts = new ArrayList<>();
        outlook.event().getPlan().getStops().stream().filter(stop -> stop.getTeam() == team && stop.getArrival() != null
                && !stop.getArrival().isBefore(day.getFrom()) && stop.getArrival().isBefore(day.getUntil()))
                .sorted(Comparator.comparing(Stop::getArrival)).map(Stop::getSite).map(this::halt)
                .forEach(halt -> halt.ifPresent(halts::add));
        if (halts.isEmpty()) {
            return;
        }
        halt(day.getStart()).ifPresent(base -> halts.add(0, base));
        halt(day.getEnd()).ifPresent(halts::add);
        for (int i = 1; i < halts.size(); i++) {
            Halt from = halts.get(i - 1);
            Halt to = halts.get(i);
            if (!from.position().equals(to.position())) {
                drives.add(new DriveLine(style, team.getId(), day.getFrom().atZone(outlook.zone()).toLocalDate(), from.name(),
                        to.name(), projector.geodesic(from.position(), to.position())));
            }
        }
    }

    private Optional<Halt> halt(Site site) {
        return Optional.ofNullable(site).filter(outlook::isPlaced)
                .map(placed -> new Halt(Naming.name(placed), outlook.position(placed)));
    }

    private Optional<Halt> halt(Base base) {
        return Optional.ofNullable(base).filter(outlook::isPlaced)
                .map(placed -> new Halt(Naming.name(placed), outlook.position(placed)));
    }
}
