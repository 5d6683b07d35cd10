package org.straddle.outlook.itinerary;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

import org.straddle.model.Bird;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Operator;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.things.Band;

/**
 * Whether the licences that are noted in a crew let it call a bird. One licence in the crew is enough. Of a team without
 * operators, and of a bird whose uplink is on no band known here, nothing is asked.
 */
public enum Licences {
    /** Somebody may. */
    COVER,
    /** Nobody is known to, but somebody's licence is not noted: it may well be there. */
    MAY_COVER,
    /** Everybody's licence is noted, and none covers it. */
    LACK;

    /** Whether a crew may call on a band at all. */
    public static Licences of(Team team, Band band) {
        return of(Crew.of(team), band::isIn, operator -> !operator.getBands().isEmpty());
    }

    /** Whether a crew may call on a band in a country; it may in one of which nothing is written down. */
    public static Licences of(Team team, Jurisdiction place, Band band) {
        return place.getAllowances().isEmpty() ? COVER
                : of(Crew.of(team), operator -> allows(place, operator, band), operator -> !blank(operator.getLicenceClass()));
    }

    /** What every turn of a team on a bird from a site breaks, whenever it is. */
    public static Set<PlanRule> broken(Outlook outlook, Team team, Site site, Bird bird) {
        Set<PlanRule> broken = EnumSet.noneOf(PlanRule.class);
        Optional<Band> band = Crew.of(team).isEmpty() ? Optional.empty() : Band.ofUplink(bird);
        if (band.isPresent()) {
            if (of(team, band.get()) == LACK) {
                broken.add(PlanRule.LICENCE_BAND);
            }
            if (outlook.jurisdictions(site).stream().anyMatch(place -> of(team, place, band.get()) == LACK)) {
                broken.add(PlanRule.LICENCE_PLACE);
            }
        }
        return broken;
    }

    private static Licences of(List<Operator> crew, Predicate<Operator> covers, Predicate<Operator> isNoted) {
        if (crew.isEmpty() || crew.stream().anyMatch(covers)) {
            return COVER;
        }
        return crew.stream().allMatch(isNoted) ? LACK : MAY_COVER;
    }

    private static boolean allows(Jurisdiction place, Operator operator, Band band) {
        return !blank(operator.getLicenceClass()) && place.getAllowances().stream()
                .anyMatch(allowance -> !blank(allowance.getLicenceClass())
                        && allowance.getLicenceClass().strip().equalsIgnoreCase(operator.getLicenceClass().strip())
                        && band.isAmong(allowance.getBands()));
    }

    private static boolean blank(String text) {
        return text == null || text.isBlank();
    }
}
