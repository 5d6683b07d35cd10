package org.straddle.safety;

import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.model.Contact;
import org.straddle.model.ContactRole;
import org.straddle.model.Event;
import org.straddle.model.InertText;
import org.straddle.model.Operator;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.model.Written;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;
import org.straddle.words.ListText;

/**
 * Who of an event may put a name under a review of a site. The first to sign is an operator of a team that stops there, or
 * of the team that the review names; while there is no such team, any operator. The second is another operator, the
 * coordinator or the deputy. People are known by their name or call sign, without regard to case and to blanks around it.
 *
 * @param teams whose operators may sign first; empty while no team is known
 */
record Signers(Optional<Event> event, Set<Team> teams) {

    private static final Catalogue TEXTS = Catalogue.of(Signers.class);

    /** @param review null for one that is not signed yet */
    static Signers of(Site site, Review review) {
        Optional<Event> event = site.eContainer() instanceof Event holder ? Optional.of(holder) : Optional.empty();
        Set<Team> teams = event.map(Event::getPlan).stream().flatMap(plan -> plan.getStops().stream())
                .filter(stop -> stop.getSite() == site).map(Stop::getTeam).filter(team -> team != null && !team.eIsProxy())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (review != null && review.getTeam() != null && !review.getTeam().eIsProxy()) {
            teams.add(review.getTeam());
        }
        return new Signers(event, teams);
    }

    /** Somebody who may sign first, by the name that they wrote. */
    Optional<Operator> first(String written) {
        return firsts().filter(operator -> isNamed(operator, written)).findFirst();
    }

    /** May somebody of this name sign second, whoever signed first? */
    boolean isOfTheEvent(String written) {
        return operators().anyMatch(operator -> isNamed(operator, written))
                || contacts().anyMatch(contact -> isSame(contact.getName(), written));
    }

    /** Do two names mean the same person, such as a name and the call sign that goes with it? */
    boolean areOne(String one, String other) {
        return isSame(one, other) || operators().anyMatch(operator -> isNamed(operator, one) && isNamed(operator, other));
    }

    /** For whom somebody who may sign first signs: a team that stops at the site, or else their own. */
    Optional<Team> teamOf(Operator first) {
        return Stream.concat(teams.stream(), event.stream().flatMap(all -> all.getTeams().stream()))
                .filter(team -> team.getOperators().contains(first)).findFirst();
    }

    /** A sentence that names who may sign first. */
    String whoFirst() {
        List<String> names = firsts().distinct().map(Signers::called).toList();
        return TEXTS.text("signers.first", "teams", teams.isEmpty() ? "none" : ListText.any(teams.stream().map(Naming::name).toList()), "who",
                names.isEmpty() ? "nobody" : teams.isEmpty() ? "event" : "team", "names", ListText.any(names));
    }

    /** A sentence that says who may sign second. */
    String whoSecond() {
        return TEXTS.text("signers.second");
    }

    private static String called(Operator operator) {
        String call = Written.or(operator.getCallSign(), "");
        return Written.isBlank(operator.getName()) || call.isEmpty() ? Naming.name(operator)
                : TEXTS.text("signers.person", "name", Naming.name(operator), "call", InertText.line(call));
    }

    private Stream<Operator> firsts() {
        return teams.isEmpty() ? operators() : teams.stream().flatMap(team -> team.getOperators().stream());
    }

    private Stream<Operator> operators() {
        return event.stream().flatMap(all -> all.getOperators().stream());
    }

    private Stream<Contact> contacts() {
        return event.stream().flatMap(all -> all.getContacts().stream())
                .filter(contact -> contact.getRole() == ContactRole.COORDINATOR || contact.getRole() == ContactRole.DEPUTY);
    }

    private static boolean isNamed(Operator operator, String written) {
        return isSame(operator.getName(), written) || isSame(operator.getCallSign(), written);
    }

    private static boolean isSame(String one, String other) {
        return !Written.isBlank(one) && !Written.isBlank(other) && folded(one).equals(folded(other));
    }

    /** Systems differ in how they type an accented letter. */
    private static String folded(String name) {
        return Normalizer.normalize(name.strip(), Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }
}
