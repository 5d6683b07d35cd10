package org.straddle.publish;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Base;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.TeamDay;
import org.straddle.outlook.DriveTime;
import org.straddle.outlook.HoldFigures;
import org.straddle.outlook.Road;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;

/**
 * One local day of a team's brief.
 *
 * @param title the date in words
 * @param start words for the start: the base and its hours, or that none is known
 * @param stops in order, each with the drive to it
 * @param wayBack the drive to the end base, when there is a stop and a base
 * @param end words for the end
 */
public record BriefDay(String title, String start, List<BriefStop> stops, Optional<Drive> wayBack, String end) {

    private static final Catalogue TEXTS = Catalogue.of(BriefDay.class);

    /**
     * A drive in words.
     *
     * @param text from, to, km and minutes
     * @param leaveBy latest start to arrive as planned; empty on the way back
     * @param trouble what is wrong with it, or empty
     */
    public record Drive(String text, Optional<Moment> leaveBy, String trouble) {
    }

    static BriefDay of(Outlook outlook, Clock clock, LocalDate date, DaysOut day, PlanHold hold) {
        return new DayWriter(outlook, clock, date, day, hold).write();
    }

    /** The state of writing one day. */
    private static final class DayWriter {

        private final Outlook outlook;
        private final Clock clock;
        private final LocalDate date;
        private final DaysOut day;
        private final PlanHold hold;
        private Optional<Identified> here = Optional.empty();
        private String hereName = "";
        private Instant free;

        DayWriter(Outlook outlook, Clock clock, LocalDate date, DaysOut day, PlanHold hold) {
            this.outlook = outlook;
            this.clock = clock;
            this.date = date;
            this.day = day;
            this.hold = hold;
        }

        BriefDay write() {
            Optional<Base> start = day.frame().map(TeamDay::getStart);
            start.filter(outlook::isPlaced).ifPresent(base -> standAt(base, name(base),
                    day.frame().map(TeamDay::getFrom).orElse(null)));
            List<BriefStop> stops = new ArrayList<>();
            Site last = null;
            for (Stop stop : day.stops()) {
                Optional<Drive> drive = Optional.empty();
                if (outlook.isPlaced(stop.getSite())) {
                    Site site = stop.getSite();
                    // Two stops in a row at one site: the team stays.
                    drive = site == last ? Optional.empty() : here
                            .flatMap(from -> driveTo(from, site, Line.of(site.getName()), stop.getArrival()));
                    standAt(site, Line.of(site.getName()), stop.getDeparture());
                }
                last = stop.getSite();
                stops.add(BriefStop.of(outlook, clock, date, stop, drive, hold));
            }
            Optional<Base> end = day.frame().map(TeamDay::getEnd);
            Optional<Drive> back = day.stops().isEmpty() ? Optional.empty()
                    : end.filter(outlook::isPlaced).flatMap(this::driveBack);
            return new BriefDay(Clock.day(date), startWords(start), stops, back, endWords(end));
        }

        private void standAt(Identified place, String name, Instant from) {
            here = Optional.of(place);
            hereName = name;
            free = from;
        }

        private Optional<Drive> driveTo(Identified from, Site to, String name, Instant arrival) {
            return outlook.road(from, to).map(road -> driveTo(road, name, arrival));
        }

        private Drive driveTo(Road road, String name, Instant arrival) {
            Instant latest = arrival.minus(road.total());
            boolean late = free != null && latest.isBefore(free);
            // So early that most drives are done in time, but not before the team can leave.
            Instant planned = arrival.minus(DriveTime.of(road, figures()).planned(figures()));
            Instant leaveBy = late ? latest : free != null && planned.isBefore(free) ? free : planned;
            return new Drive(words(road, name), Optional.of(clock.minute(leaveBy, date)), late
                    ? TEXTS.text("briefDay.driveTakesAbout", "minutes", minutes(Duration.between(latest, free)))
                    : "");
        }

        private HoldFigures figures() {
            return HoldFigures.of(outlook.event().getPolicies());
        }

        private Optional<Drive> driveBack(Base end) {
            return here.flatMap(from -> outlook.road(from, end)).map(road -> {
                Instant back = free.plus(road.total());
                Instant until = day.frame().map(TeamDay::getUntil).orElse(null);
                boolean late = until != null && back.isAfter(until);
                return new Drive(TEXTS.text("briefDay.thereAboutUtc", "words", words(road, name(end)),
                        "utc", clock.minute(back, date).utc(),
                        "local", clock.minute(back, date).local()), Optional.empty(), late
                                ? TEXTS.text("briefDay.aboutAfterDay",
                                        "minutes", minutes(Duration.between(until, back))) : "");
            });
        }

        private String words(Road road, String to) {
            return TEXTS.text("briefDay.aboutKm", "hereName", hereName, "to", to, "roadKm", Math.round(road.roadKm()),
                    "minutes", minutes(road.total()),
                    "origin", road.isEntered() ? " (" + Line.of(road.origin()) + ")" : "",
                    "minutes2", road.breaks().isZero() ? "" : TEXTS.text("briefDay.breaks",
                    "minutes", minutes(road.breaks())));
        }

        private String startWords(Optional<Base> start) {
            Moment from = day.frame().map(TeamDay::getFrom).map(at -> clock.minute(at, date)).orElse(null);
            return day.frame().isEmpty() ? TEXTS.text("briefDay.teamHasHours")
                    : TEXTS.text("briefDay.start",
                            "start", start.map(this::name).orElse(TEXTS.text("briefDay.baseNamed")),
                            "utc", from == null ? "" : TEXTS.text("briefDay.notBeforeUtc", "utc", from.utc(),
                            "local", from.local()));
        }

        private String endWords(Optional<Base> end) {
            Moment until = day.frame().map(TeamDay::getUntil).map(at -> clock.minute(at, date)).orElse(null);
            return day.frame().isEmpty() ? "" : TEXTS.text("briefDay.end",
                    "end", end.map(this::name).orElse(TEXTS.text("briefDay.baseNamed")), "utc", until == null ? ""
                    : TEXTS.text("briefDay.utcLocal", "utc", until.utc(), "local", until.local()));
        }

        private String name(Base base) {
            return Line.of(base.getName(), TEXTS.text("briefDay.unnamedBase"));
        }

        private static String minutes(Duration duration) {
            return TEXTS.text("briefDay.min", "toSeconds", Math.max(1, Math.round(duration.toSeconds() / 60.0)));
        }
    }
}
