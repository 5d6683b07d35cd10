package org.straddle.daysheet.sheet;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Base;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Road;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/**
 * The drives of a team: on each day from its base over its stops to its base. Where no time is left between two stops
 * there is nothing to draw; the findings tell.
 */
final class DriveReading {

    private static final Catalogue TEXTS = Catalogue.of(DriveReading.class);

    /** Where a team is from and until when; the time is open at a base. */
    private record Halt(String name, Optional<Identified> place, Instant from, Instant until) {
    }

    private final Outlook outlook;
    private final Rows rows;
    private final List<PlacedDrive> drives = new ArrayList<>();

    DriveReading(Outlook outlook, Rows rows) {
        this.outlook = outlook;
        this.rows = rows;
    }

    List<PlacedDrive> read(List<OpenSpan> spans, List<PlacedStop> stops) {
        for (OpenSpan span : spans) {
            List<Halt> halts = new ArrayList<>();
            stops.stream().filter(stop -> span.window().contains(stop.window().start())).map(this::halt)
                    .forEach(halts::add);
            if (!halts.isEmpty()) {
                toFirst(span, halts.get(0));
                for (int i = 1; i < halts.size(); i++) {
                    between(halts.get(i - 1), halts.get(i));
                }
                fromLast(halts.get(halts.size() - 1), span);
            }
        }
        return List.copyOf(drives);
    }

    /** The team leaves its base as late as it can. */
    private void toFirst(OpenSpan span, Halt first) {
        Instant from = span.window().start();
        span.start().ifPresent(base -> drive(halt(base, from, from), first, true));
    }

    private void between(Halt here, Halt next) {
        drive(here, next, false);
    }

    private void fromLast(Halt last, OpenSpan span) {
        Instant until = span.window().end();
        span.end().ifPresent(base -> drive(last, halt(base, until, until), false));
    }

    private void drive(Halt here, Halt there, boolean late) {
        Duration room = Duration.between(here.until(), there.from());
        if (here.place().isEmpty() || there.place().isEmpty() || room.isNegative() || room.isZero()) {
            return;
        }
        outlook.road(here.place().get(), there.place().get()).ifPresent(drive -> drive(here, there, drive, room, late));
    }

    private void drive(Halt here, Halt there, Road drive, Duration room, boolean late) {
        Duration length = drive.total().compareTo(room) < 0 ? drive.total() : room;
        if (length.isZero()) {
            return;
        }
        Instant start = late ? there.from().minus(length) : here.until();
        Window window = Window.of(start, length);
        drives.add(new PlacedDrive(here.name(), there.name(), drive, window, room, rows.place(window)));
    }

    private Halt halt(PlacedStop stop) {
        Site site = stop.stop().getSite();
        return new Halt(site == null ? TEXTS.text("drive.nosite") : Naming.name(site), Optional.ofNullable(site),
                stop.window().start(), stop.window().end());
    }

    private Halt halt(Base base, Instant from, Instant until) {
        return new Halt(Naming.name(base), Optional.of(base), from, until);
    }
}
