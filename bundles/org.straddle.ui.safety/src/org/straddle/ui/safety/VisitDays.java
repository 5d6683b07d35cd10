package org.straddle.ui.safety;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;
import org.straddle.words.DateText;

/** The days for which somebody may ask about a site: those of the event, and today. */
final class VisitDays {

    private static final Catalogue TEXTS = Catalogue.of(VisitDays.class);

    /** An event of more days than this is a slip of the pen; the choice stays short. */
    private static final int MOST = 31;

    private VisitDays() {
    }

    /** The day of the first planned stop there, else the first of the event, else today. */
    static LocalDate first(Event event, Site site, LocalDate today) {
        Stream<Stop> stops = event.getPlan() == null ? Stream.of() : event.getPlan().getStops().stream();
        return stops.filter(stop -> stop.getSite() == site).map(Stop::getArrival).filter(Objects::nonNull)
                .min(Comparator.naturalOrder()).map((Instant at) -> at.atZone(Outlook.zoneOf(event)).toLocalDate())
                .orElse(event.getFirstDay() != null ? event.getFirstDay() : today);
    }

    static List<LocalDate> offered(Event event, LocalDate chosen, LocalDate today) {
        TreeSet<LocalDate> days = new TreeSet<>(List.of(chosen, today));
        LocalDate first = event.getFirstDay();
        LocalDate last = event.getLastDay();
        if (first != null && last != null && !last.isBefore(first)) {
            first.datesUntil(last.plusDays(1)).limit(MOST).forEach(days::add);
        }
        return List.copyOf(days);
    }

    static String text(LocalDate day, LocalDate today) {
        return TEXTS.text("visitDays.day", "day", DateText.inCurrent().dated(day), "today", day.equals(today));
    }
}
