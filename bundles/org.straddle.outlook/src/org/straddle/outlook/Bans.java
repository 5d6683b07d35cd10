package org.straddle.outlook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.straddle.grid.Square;
import org.straddle.model.Ban;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Site;
import org.straddle.model.Team;
import org.straddle.sky.Window;

/**
 * What the bans of an event forbid. The one reading of a {@link Ban}, for whoever plans and for whoever checks.
 *
 * <p>A ban forbids everything that matches all it names, at any moment of its period; what it leaves empty matches
 * anything. A stop has a team, a site with squares, and a time, so a ban that names a bird never matches it; a turn has
 * a bird besides, so what bans its stop bans it too. A drive has a team and a time only: it is banned where the team may
 * do nothing at all, by a ban that names neither site, square nor bird.
 *
 * <p>A ban that says nothing at all forbids nothing, nor does one that names something that is gone or no square, or
 * whose period is over before it begins: a slip must not empty a plan.
 */
public final class Bans {

    /** No bans at all. */
    public static final Bans NONE = new Bans(List.of());

    private final List<Ban> bans;

    private Bans(Collection<Ban> bans) {
        this.bans = bans.stream().filter(Bans::saysSomething).toList();
    }

    /** Those in the event's plan. */
    public static Bans of(Event event) {
        return new Bans(event.getPlan() == null ? List.of() : event.getPlan().getBans());
    }

    /** These and more; the things that those name are found by id, so they may be of another copy of the event. */
    public Bans and(Collection<Ban> more) {
        List<Ban> all = new ArrayList<>(bans);
        all.addAll(more);
        return new Bans(all);
    }

    /** Those that forbid something. */
    public List<Ban> all() {
        return bans;
    }

    /** The bans that forbid a stop; null stands for a team or site that is not chosen yet. */
    public List<Ban> onStop(Team team, Site site, Window stay) {
        return bans.stream().filter(ban -> forbidsStop(ban, team, site) && isIn(ban, stay)).toList();
    }

    /** The bans that forbid a turn, whether by itself or because they forbid to be there then. */
    public List<Ban> onTurn(Team team, Site site, Bird bird, Window turn) {
        return bans.stream().filter(ban -> (forbidsStop(ban, team, site) || forbidsTurn(ban, team, site, bird))
                && isIn(ban, turn)).toList();
    }

    /** The bans that forbid a team to be on the road at any moment of a window. */
    public List<Ban> onDrive(Team team, Window window) {
        return bans.stream().filter(ban -> forbidsDrive(ban, team) && isIn(ban, window)).toList();
    }

    /** Whether a ban forbids a team's stops at a site, in its period. */
    public static boolean forbidsStop(Ban ban, Team team, Site site) {
        return ban.getBird() == null && matches(ban.getTeam(), team) && matches(ban.getSite(), site)
                && matchesSquare(ban, site);
    }

    /** Whether a ban names a bird and forbids its turns by a team at a site, in its period. */
    public static boolean forbidsTurn(Ban ban, Team team, Site site, Bird bird) {
        return ban.getBird() != null && matches(ban.getBird(), bird) && matches(ban.getTeam(), team)
                && matches(ban.getSite(), site) && matchesSquare(ban, site);
    }

    /** Whether a ban forbids a team to do anything at all, in its period. */
    public static boolean forbidsDrive(Ban ban, Team team) {
        return ban.getSite() == null && ban.getBird() == null && squareName(ban).isEmpty()
                && matches(ban.getTeam(), team);
    }

    /** Whether the period of a ban shares an instant with a window. */
    public static boolean isIn(Ban ban, Window window) {
        return period(ban, window).isPresent();
    }

    /** The part of a window that lies in the period of a ban. */
    public static Optional<Window> period(Ban ban, Window within) {
        Instant from = ban.getFrom() == null || ban.getFrom().isBefore(within.start()) ? within.start() : ban.getFrom();
        Instant until = ban.getUntil() == null || ban.getUntil().isAfter(within.end()) ? within.end() : ban.getUntil();
        return from.isBefore(until) ? Optional.of(new Window(from, until)) : Optional.empty();
    }

    private static boolean saysSomething(Ban ban) {
        boolean names = ban.getTeam() != null || ban.getSite() != null || ban.getBird() != null
                || !squareName(ban).isEmpty();
        boolean turned = ban.getFrom() != null && ban.getUntil() != null && !ban.getFrom().isBefore(ban.getUntil());
        return (names || ban.getFrom() != null || ban.getUntil() != null) && !turned
                && (squareName(ban).isEmpty() || Square.named(squareName(ban)).isPresent());
    }

    private static boolean matches(Identified named, Identified thing) {
        return named == null || !((EObject) named).eIsProxy() && thing != null
                && (named == thing || named.getId() != null && named.getId().equals(thing.getId()));
    }

    private static boolean matchesSquare(Ban ban, Site site) {
        Optional<Square> named = Square.named(squareName(ban));
        return named.isEmpty() || site != null
                && site.getSquares().stream().anyMatch(name -> Square.named(name).equals(named));
    }

    private static String squareName(Ban ban) {
        return ban.getSquare() == null ? "" : ban.getSquare().strip();
    }
}
