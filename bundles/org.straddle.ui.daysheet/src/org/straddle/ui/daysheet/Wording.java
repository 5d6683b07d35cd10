package org.straddle.ui.daysheet;

import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.straddle.check.Finding;
import org.straddle.daysheet.layout.DayTab;
import org.straddle.daysheet.layout.LaneBox;
import org.straddle.daysheet.layout.DriveBox;
import org.straddle.daysheet.layout.SheetPart;
import org.straddle.daysheet.layout.SpanBox;
import org.straddle.daysheet.layout.StopBox;
import org.straddle.daysheet.layout.TurnBox;
import org.straddle.daysheet.sheet.Lane;
import org.straddle.daysheet.sheet.OpenSpan;
import org.straddle.daysheet.sheet.PlacedDrive;
import org.straddle.daysheet.sheet.PlacedStop;
import org.straddle.daysheet.sheet.PlacedTurn;
import org.straddle.daysheet.sheet.SheetItem;
import org.straddle.grid.Square;
import org.straddle.model.Bird;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Pass;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;
import org.straddle.words.DateText;
import org.straddle.words.LengthText;
import org.straddle.words.TimeText;

/** What tooltips and screen readers say of the parts of a sheet. */
final class Wording {

    private static final Catalogue TEXTS = Catalogue.of(Wording.class);

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
        } else if (part instanceof DriveBox drive) {
            return drive(drive.drive());
        } else if (part instanceof SpanBox span) {
            return span(span.span());
        } else if (part instanceof LaneBox lane) {
            return lane(lane.lane());
        } else if (part instanceof DayTab day) {
            return TEXTS.text("day.alone", "day", DateText.inCurrent().weekday(day.day().date()),
                    "numbered", day.number().isPresent(), "key", day.day().number());
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
        lines.add(site == null ? TEXTS.text("stop.nosite", "team", team(stop.getTeam()))
                : TEXTS.text("stop.at", "team", team(stop.getTeam()), "site", Naming.name(site),
                        "kind", Naming.of(site.getKind())));
        lines.add(times(placed.window()));
        if (site != null && !outlook.squares(site).isEmpty()) {
            lines.add(TEXTS.text("stop.squares",
                    "squares", outlook.squares(site).stream().map(this::square).collect(Collectors.joining(", "))));
        }
        lines.add(TEXTS.text("stop.turns", "turns", placed.turns().size(), "pinned", stop.isPinned()));
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
        lines.add(TEXTS.text("turn", "letters", placed.bird().letters(), "bird", bird == null
                ? TEXTS.text("nobird") : Naming.name(bird) + ", " + Naming.of(bird.getMode()),
                "pinned", placed.turn().isPinned()));
        lines.add(times(placed.window()));
        if (placed.turn().getDownlinkMhz() > 0) {
            lines.add(TEXTS.text("turn.downlink", "mhz", placed.turn().getDownlinkMhz()));
        }
        placed.pass().ifPresentOrElse(pass -> lines.addAll(pass(pass)),
                () -> lines.add(TEXTS.text("turn.nopass")));
        if (bird != null) {
            lines.addAll(new TurnCost(outlook).lines(placed));
        }
        tell(lines, placed.findings());
        return String.join("\n", lines);
    }

    private static List<String> pass(Pass pass) {
        return List.of(
                TEXTS.text("pass.aos", "startsBefore", pass.startsBefore(),
                        "time", TimeText.utc().seconds(pass.aos()), "azimuth", degrees(pass.aosAzimuthDeg())),
                TEXTS.text("pass.tca", "time", TimeText.utc().seconds(pass.tca()),
                        "azimuth", degrees(pass.tcaAzimuthDeg()), "peak", degrees(pass.peakElevationDeg())),
                TEXTS.text("pass.los", "endsAfter", pass.endsAfter(),
                        "time", TimeText.utc().seconds(pass.los()), "azimuth", degrees(pass.losAzimuthDeg())));
    }

    private static String drive(PlacedDrive placed) {
        long need = minutes(placed.road().total());
        long breaks = minutes(placed.road().breaks());
        long spare = minutes(placed.room().minus(placed.road().total()));
        return TEXTS.text("drive", "from", placed.from(), "to", placed.to(),
                "roadKm", Math.round(placed.road().roadKm()), "need", need, "breaks", breaks, "room", minutes(placed.room()),
                "fits", placed.fits(), "spare", Math.abs(spare), "entered", placed.road().isEntered(), "origin", placed.road().origin());
    }

    private String span(OpenSpan span) {
        return TEXTS.text("span", "times", times(span.window()),
                "started", span.start().isPresent(),
                "start", span.start().map(Naming::name).orElse(""), "ended", span.end().isPresent(),
                "end", span.end().map(Naming::name).orElse(""));
    }

    private String lane(Lane lane) {
        List<String> lines = new ArrayList<>();
        lines.add(lane.team().map(Naming::name).map(team -> TEXTS.text("lane.of", "team", team)).orElse(TEXTS.text("lane.noteam")));
        lane.team().map(Team::getOperators).filter(operators -> !operators.isEmpty())
                .ifPresent(operators -> lines.add(operators.stream().map(Naming::name)
                        .collect(Collectors.joining(", "))));
        lines.add(TEXTS.text("lane.stops", "stops", lane.stops().size()));
        tell(lines, lane.open());
        return String.join("\n", lines);
    }

    private void tell(List<String> lines, List<Finding> told) {
        told.stream().limit(MOST_FINDINGS).forEach(finding -> lines.add(TEXTS.text("finding",
                "accepted", finding.accepted().isPresent(), "severity", finding.severity().label(),
                "sentence", finding.sentence())));
        if (told.size() > MOST_FINDINGS) {
            lines.add(TEXTS.text("finding.more", "count", told.size() - MOST_FINDINGS));
        }
    }

    private String square(Square square) {
        return TEXTS.text("square", "square", square, "demand", Math.round(100 * outlook.demand(square)));
    }

    private String times(Window window) {
        ZoneId zone = outlook.zone();
        return TEXTS.text("times", "times", TimeText.of(zone).during(window.start(), window.end()),
                "length", LengthText.inCurrent().minutes(window.duration()));
    }

    private static String team(Team team) {
        return team == null ? TEXTS.text("noteam") : Naming.name(team);
    }

    private static String degrees(double value) {
        return Math.round(value) + "°";
    }

    private static long minutes(Duration duration) {
        return Math.round(duration.toSeconds() / 60.0);
    }
}
