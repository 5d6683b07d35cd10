package org.straddle.safety;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

import org.straddle.model.Event;
import org.straddle.model.HazardKind;
import org.straddle.model.Jurisdiction;
import org.straddle.model.Policies;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Visit;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.PolicyFigures;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * What a team must know about the hazards of a site on one day: what the newest visit saw, what it says
 * about each hazard, the usual cautions for its kind, and whether a review holds.
 *
 * <p>The cautions are usual practice from published sources, not a measure of a real place: local codes, the owner's
 * rules and licensed people come first, and the sheet says so.
 *
 * @param visit the newest visit dated on the day or before
 * @param review the review that decides; empty when none counts
 * @param remarks what else wants attention: a stale visit, a lapsed permission, a road that no hazard mentions
 */
public record SafetyNotes(Site site, LocalDate day, Optional<Visit> visit, List<HazardNote> hazards,
        Optional<Review> review, ReviewState state, List<String> remarks) {

    private static final Catalogue TEXTS = Catalogue.of(SafetyNotes.class);

    /** Stands under every list of cautions. */
    public static final String DEFERENCE = TEXTS.text("safetyNotes.theseUsualCautions");

    public SafetyNotes {
        hazards = List.copyOf(hazards);
        remarks = List.copyOf(remarks);
    }

    /** With the policies of the event that the site belongs to, or the usual ones when it stands alone. */
    public static SafetyNotes of(Site site, LocalDate day) {
        Policies policies = site.eContainer() instanceof Event event ? event.getPolicies() : null;
        return of(site, day, policies);
    }

    /**
     * @param day a local day of the event
     * @param policies null for the usual ones
     */
    public static SafetyNotes of(Site site, LocalDate day, Policies policies) {
        return of(site, day, policies, Light.UNKNOWN);
    }

    /**
     * @param day a local day of the event
     * @param policies null for the usual ones
     * @param light worst light while the team is there
     */
    public static SafetyNotes of(Site site, LocalDate day, Policies policies, Light light) {
        return of(site, day, policies, light, List.of());
    }

    /**
     * With what the countries ask for that the site lies in, as far as entered: for whatever people read on the spot.
     *
     * @param day a local day of the event
     * @param light worst light while the team is there
     */
    public static SafetyNotes of(Outlook outlook, Site site, LocalDate day, Light light) {
        return of(site, day, outlook.event().getPolicies(), light, outlook.jurisdictions(site));
    }

    /** The same where the countries are known already. */
    public static SafetyNotes of(Site site, LocalDate day, Policies policies, Light light, Collection<Jurisdiction> countries) {
        Policies chosen = policies != null ? policies : StraddleFactory.eINSTANCE.createPolicies();
        Occasion occasion = Occasion.of(day, light, chosen, HighVisibility.ofCountries(countries));
        Optional<Visit> visit = SiteReviews.newestVisit(site, day);
        return new SafetyNotes(site, day, visit, visit.map(there -> hazards(site, there, occasion)).orElse(List.of()),
                SiteReviews.decisive(site, day), SiteReviews.state(site, day, chosen),
                remarks(visit, day, chosen, seen -> Cautions.traffic(seen.getRoadSpeedKmh(), occasion.light(), occasion.countryClass())));
    }

    /** Overhead wires first: nothing else kills as fast. */
    private static List<HazardNote> hazards(Site site, Visit visit, Occasion occasion) {
        Set<String> said = new HashSet<>();
        return Stream.concat(HazardNote.ofWires(site, visit, occasion).stream(), visit.getHazards().stream()
                .filter(hazard -> hazard.getKind() != HazardKind.POWER_LINE)
                .map(hazard -> HazardNote.of(hazard, visit, occasion))).map(note -> note.without(said)).toList();
    }

    /** @param besideTraffic what to do where traffic passes that no hazard names */
    private static List<String> remarks(Optional<Visit> newest, LocalDate day, Policies policies,
            Function<Visit, List<String>> besideTraffic) {
        List<String> remarks = new ArrayList<>();
        visitTrouble(newest, day, policies).ifPresent(remarks::add);
        permissionTrouble(newest, day).ifPresent(remarks::add);
        if (newest.isEmpty()) {
            return remarks;
        }
        Visit visit = newest.get();
        if (visit.getHazards().isEmpty() && visit.getOverheadLines().isEmpty()) {
            remarks.add(TEXTS.text("safetyNotes.visitNamesHazard"));
        }
        if (speedIsNoted(visit)
                && visit.getHazards().stream().noneMatch(hazard -> hazard.getKind() == HazardKind.TRAFFIC)) {
            remarks.add(TEXTS.text("safetyNotes.trafficPassesKm", "real", visit.getRoadSpeedKmh() > 0 ? "yes" : "no",
                    "roadSpeedKmh", FigureText.inCurrent().atMost(1, visit.getRoadSpeedKmh()),
                    "traffic", String.join(" ", besideTraffic.apply(visit))).strip());
        }
        return remarks;
    }

    /** The remarks without what to do about them: for a list of many sites. */
    public List<String> shortRemarks() {
        return remarks(visit, day, policies(), seen -> List.of());
    }

    private static Optional<String> visitTrouble(Optional<Visit> newest, LocalDate day, Policies policies) {
        PolicyFigures figures = PolicyFigures.of(policies);
        return Optional.ofNullable(switch (VisitState.of(newest, day, figures)) {
            case MISSING -> TEXTS.text("safetyNotes.nobodyVisitedSite", "day", day);
            case UNDATED -> TEXTS.text("safetyNotes.visitHasDate");
            case EXPIRED -> TEXTS.text("safetyNotes.visitExpired", "date", newest.get().getDate(),
                    "expires", newest.get().getExpires());
            case OLD -> TEXTS.text("safetyNotes.visitOlderThan", "date", newest.get().getDate(),
                    "visitAgeLimitDays", figures.visitAgeLimitDays());
            case HOLDS -> null;
        });
    }

    private static Optional<String> permissionTrouble(Optional<Visit> newest, LocalDate day) {
        return lapsed(newest, day).map(last -> TEXTS.text("safetyNotes.permissionThereHeld", "accessUntil", last));
    }

    private static Optional<LocalDate> lapsed(Optional<Visit> newest, LocalDate day) {
        return newest.map(Visit::getAccessUntil).filter(last -> last.isBefore(day));
    }

    private Policies policies() {
        Policies policies = site.eContainer() instanceof Event event ? event.getPolicies() : null;
        return policies != null ? policies : StraddleFactory.eINSTANCE.createPolicies();
    }

    /** Whether the newest visit can be relied on on the day. */
    public VisitState visitState() {
        return VisitState.of(visit, day, PolicyFigures.of(policies()));
    }

    /** The last day of the permission to be there, when that is before the day. */
    public Optional<LocalDate> permissionLapsed() {
        return lapsed(visit, day);
    }

    /** Why the newest visit does not hold on the day; empty when it does. */
    public Optional<String> visitTrouble() {
        return visitTrouble(visit, day, policies());
    }

    /** Why nobody may be there on the day; empty when a visit saw no end of the permission, or one that lies ahead. */
    public Optional<String> permissionTrouble() {
        return permissionTrouble(visit, day);
    }

    /** What is still wrong with the hazards of the newest visit: no measure, not rated, or more left than the event takes. */
    public List<String> hazardTrouble() {
        return visit.map(visit -> HazardRating.trouble(visit, policies())).orElse(List.of());
    }

    /** A speed that cannot be still says that there is a road. */
    private static boolean speedIsNoted(Visit visit) {
        return visit.getRoadSpeedKmh() != 0;
    }

    /** Does traffic pass there, as far as the newest visit says? */
    public boolean hasTraffic() {
        return visit.filter(visit -> speedIsNoted(visit)
                || visit.getHazards().stream().anyMatch(hazard -> hazard.getKind() == HazardKind.TRAFFIC)).isPresent();
    }

    /** The one figure for everything upright there; empty where the newest visit saw no wires and named no limit. */
    public Optional<MastLimit> mastLimit() {
        return visit.flatMap(visit -> MastLimit.of(site, visit, Occasion.of(day, Light.UNKNOWN, policies(), 0).spanM()));
    }
}
