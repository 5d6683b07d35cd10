package org.straddle.check.rules;

import java.time.LocalDate;
import java.util.function.Predicate;
import java.util.stream.Stream;

import org.straddle.check.Finding;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Survey;
import org.straddle.outlook.Outlook;
import org.straddle.safety.SafetyNotes;

/**
 * A site on the first day of the plan on which something is so, with what safety knows of it then.
 *
 * @param stay  the stop that begins on the day
 * @param notes what is known of the site on the day
 */
record Visit(Site site, Stay stay, LocalDate day, SafetyNotes notes) {

    /** Of every used site the first visit that has something to tell. */
    static Stream<Visit> first(Outlook outlook, Predicate<Visit> telling) {
        Words words = new Words(outlook.zone());
        return Itinerary.of(outlook.event()).bySite().values().stream()
                .flatMap(stays -> stays.stream().map(stay -> of(stay, outlook, words)).filter(telling).findFirst()
                        .stream());
    }

    private static Visit of(Stay stay, Outlook outlook, Words words) {
        LocalDate day = words.date(stay.window().start());
        return new Visit(stay.site(), stay, day,
                SafetyNotes.of(stay.site(), day, outlook.event().getPolicies()));
    }

    Finding finding(NamedRule rule, String sentence) {
        return Finding.of(rule, sentence, site)
                .restingOn(notes.survey().map(Survey::getId), notes.review().map(Review::getId))
                .at(stay.window().start());
    }
}
