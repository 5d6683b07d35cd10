package org.straddle.ui.daysheet;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.straddle.check.Finding;
import org.straddle.daysheet.layout.DayTab;
import org.straddle.daysheet.layout.LaneBox;
import org.straddle.daysheet.layout.LegBox;
import org.straddle.daysheet.layout.SheetPart;
import org.straddle.daysheet.layout.SpanBox;
import org.straddle.daysheet.layout.StopBox;
import org.straddle.daysheet.layout.TurnBox;
import org.straddle.daysheet.sheet.Lane;
import org.straddle.daysheet.sheet.OpenSpan;
import org.straddle.daysheet.sheet.PlacedLeg;
import org.straddle.daysheet.sheet.PlacedStop;
import org.straddle.daysheet.sheet.PlacedTurn;
import org.straddle.daysheet.sheet.SheetItem;
import org.straddle.grid.Square;
import org.straddle.model.Base;
import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.things.ThingText;
import org.straddle.outlook.things.Times;
import org.straddle.sky.Pass;
import org.straddle.sky.Window;

/** What tooltips and screen readers say of the parts of a sheet. */
final class Wording {

    /** Tooltips longer than this leave the screen. */
    private static final int MOST_FINDINGS = 8;

    private final Outlook outlook;
    private final List<Finding> findings;

    /** @param findings all of the event, of which those about a site are told with its stops */
    Wording(Outlook outlook, List<Finding> findings) {
        this.outlook = outlook;
        this.findings = findings;
    }

    String of(SheetPart part) {
        if (part instanceof StopBox stop) {
            return stop(stop.stop());
        } else if (part instanceof TurnBox turn) {
            return turn(turn.turn());
        } else if (part instanceof LegBox leg) {
            return leg(leg.leg());
        } else if (part instanceof SpanBox span) {
            return span(span.span());
        } else if (part instanceof LaneBox lane) {
            return lane(lane.lane());
        } else if (part instanceof DayTab day) {
            return "Show " + Times.day(day.day().date()) + " alone"
                    + day.number().map(box -> " (key " + day.day().number() + ")").orElse("");
        }
        return "";
    }

    String of(SheetItem item) {
        return item instanceof PlacedStop stop ? stop(stop) : turn((PlacedTurn) item);
    }

    private String stop(PlacedStop placed) {
        Stop stop = placed.stop();
        Site site = stop.getSite();
        List<String> lines = new ArrayList<>();
        lines.add(team(stop.getTeam()) + " at " + (site == null ? "no site" : ThingText.of(site) + ", "
                + site.getKind().getLiteral() + " site"));
        lines.add(times(placed.window()));
        if (site != null && !outlook.squares(site).isEmpty()) {
            lines.add("Squares " + outlook.squares(site).stream().map(this::square)
                    .collect(Collectors.joining(", ")));
        }
        lines.add(counted(placed.turns().size(), "turn") + (stop.isPinned() ? ", pinned" : ""));
        tell(lines, placed.findings());
        if (site != null) {
            List<Finding> ofSite = findings.stream().filter(finding -> finding.objects().stream()
                            .anyMatch(object -> object.getId().equals(site.getId())))
                    .filter(finding -> finding.objects().stream().noneMatch(Stop.class::isInstance)).toList();
            tell(lines, ofSite.stream().filter(finding -> !placed.findings().contains(finding)).toList());
        }
        return String.join("\n", lines);
    }

    private String turn(PlacedTurn placed) {
        Bird bird = placed.turn().getBird();
        List<String> lines = new ArrayList<>();
        lines.add("Turn " + placed.bird().letters() + ": "
                + (bird == null ? "no bird" : ThingText.of(bird) + ", " + bird.getMode().getLiteral())
                + (placed.turn().isPinned() ? ", pinned" : ""));
        lines.add(times(placed.window()));
        if (placed.turn().getDownlinkMhz() > 0) {
            lines.add(String.format(Locale.ROOT, "Downlink %.3f MHz", placed.turn().getDownlinkMhz()));
        }
        placed.pass().ifPresentOrElse(pass -> lines.addAll(pass(pass)),
                () -> lines.add("No pass of the bird over this site is known at that time."));
        if (bird != null) {
            lines.addAll(new TurnCost(outlook).lines(placed));
        }
        tell(lines, placed.findings());
        return String.join("\n", lines);
    }

    private static List<String> pass(Pass pass) {
        return List.of(
                (pass.startsBefore() ? "Already up" : "AOS") + " " + Times.utcSeconds(pass.aos()) + "Z, azimuth "
                        + degrees(pass.aosAzimuthDeg()),
                "TCA " + Times.utcSeconds(pass.tca()) + "Z, azimuth " + degrees(pass.tcaAzimuthDeg()) + ", peak "
                        + degrees(pass.peakElevationDeg()),
                (pass.endsAfter() ? "Still up" : "LOS") + " " + Times.utcSeconds(pass.los()) + "Z, azimuth "
                        + degrees(pass.losAzimuthDeg()));
    }

    private static String leg(PlacedLeg placed) {
        long need = minutes(placed.leg().total());
        long breaks = minutes(placed.leg().breaks());
        long spare = minutes(placed.room().minus(placed.leg().total()));
        return "Drive " + placed.from() + " to " + placed.to() + "\nAbout " + Math.round(placed.leg().roadKm())
                + " km of road, " + need + " min" + (breaks > 0 ? " with " + breaks + " min of breaks" : "")
                + "\n" + minutes(placed.room()) + " min until the team is due: "
                + (placed.fits() ? spare + " min to spare" : -spare + " min short")
                + "\n" + (placed.leg().isEntered() ? "Time " + placed.leg().origin() + "." : "Estimated from the distance.");
    }

    private String span(OpenSpan span) {
        return "The team may be out\n" + times(span.window())
                + span.start().map(base -> "\nFrom " + name(base)).orElse("\nNo base to start from")
                + span.end().map(base -> "\nBack at " + name(base)).orElse("\nNo base to return to");
    }

    private String lane(Lane lane) {
        List<String> lines = new ArrayList<>();
        lines.add(lane.team().map(Wording::team).orElse("Stops without a team"));
        lane.team().map(Team::getOperators).filter(operators -> !operators.isEmpty())
                .ifPresent(operators -> lines.add(operators.stream().map(ThingText::of)
                        .collect(Collectors.joining(", "))));
        lines.add(counted(lane.stops().size(), "stop"));
        tell(lines, lane.open());
        return String.join("\n", lines);
    }

    private void tell(List<String> lines, List<Finding> told) {
        told.stream().limit(MOST_FINDINGS).forEach(finding -> lines.add("• "
                + (finding.accepted().isPresent() ? "accepted " : "") + finding.severity().label() + ": "
                + finding.sentence()));
        if (told.size() > MOST_FINDINGS) {
            lines.add("• and " + (told.size() - MOST_FINDINGS) + " more, see Findings");
        }
    }

    private String square(Square square) {
        return square + " (demand " + Math.round(100 * outlook.demand(square)) + " %)";
    }

    private String times(Window window) {
        ZoneId zone = outlook.zone();
        return Times.utcDay(window.start()) + " " + clock(window.start()) + "–" + Times.utcClock(window.end()) + " ("
                + length(window.duration()) + "), local " + Times.local(window.start(), zone) + "–"
                + Times.localSeconds(window.end(), zone).substring(0, 5);
    }

    private static String clock(Instant instant) {
        return Times.utcClock(instant).replace("Z", "");
    }

    private static String team(Team team) {
        return team == null ? "No team" : "Team " + ThingText.of(team);
    }

    private static String name(Base base) {
        return ThingText.of(base);
    }

    private static String counted(int count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }

    private static String degrees(double value) {
        return Math.round(value) + "°";
    }

    private static String length(Duration duration) {
        long minutes = minutes(duration);
        return minutes < 120 ? minutes + " min" : minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60
                + " min");
    }

    private static long minutes(Duration duration) {
        return Math.round(duration.toSeconds() / 60.0);
    }
}
