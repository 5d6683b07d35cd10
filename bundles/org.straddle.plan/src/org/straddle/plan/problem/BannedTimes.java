package org.straddle.plan.problem;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What bans leave of a problem: per day and site the times at which no stay may lie, and those at which a bird may not
 * be worked there. Fixed stays stand outside it, but no further turn is worked in them against a ban.
 */
public final class BannedTimes {

    public static final BannedTimes NONE = new BannedTimes(List.of(), List.of());

    /** The stay lies in a banned time. */
    public static final int BANNED = -1;

    /** No stay of a day at a site may share a second with this time. */
    public record Closed(int day, int site, int from, int until) {
    }

    /** No turn of a day at a site on a bird may share a second with this time. */
    public record Silent(int day, int site, int bird, int from, int until) {
    }

    /** No turn of a day may share a second with this time, wherever it is. */
    public record Quiet(int day, int from, int until) {
    }

    private record Lane(int day, int site) {
    }

    private final Map<Lane, List<Closed>> closed = new HashMap<>();
    private final Map<Lane, List<Silent>> silent = new HashMap<>();
    private final Map<Integer, List<Quiet>> quiet = new HashMap<>();

    public BannedTimes(List<Closed> closedTimes, List<Silent> silentTimes) {
        this(closedTimes, silentTimes, List.of());
    }

    public BannedTimes(List<Closed> closedTimes, List<Silent> silentTimes, List<Quiet> quietTimes) {
        quietTimes.forEach(time -> quiet.computeIfAbsent(time.day, any -> new ArrayList<>()).add(time));
        closedTimes.stream().sorted(Comparator.comparingInt(Closed::from)).forEach(this::add);
        silentTimes.forEach(time -> silent.computeIfAbsent(new Lane(time.day, time.site), lane -> new ArrayList<>())
                .add(time));
    }

    /** Those that overlap or touch become one. */
    private void add(Closed time) {
        List<Closed> ofLane = closed.computeIfAbsent(new Lane(time.day, time.site), lane -> new ArrayList<>());
        Closed last = ofLane.isEmpty() ? null : ofLane.get(ofLane.size() - 1);
        if (last != null && time.from <= last.until) {
            ofLane.set(ofLane.size() - 1,
                    new Closed(time.day, time.site, last.from, Math.max(last.until, time.until)));
        } else {
            ofLane.add(time);
        }
    }

    public boolean isEmpty() {
        return closed.isEmpty() && silent.isEmpty() && quiet.isEmpty();
    }

    /** How many banned times are over before a stay, or {@link #BANNED}. */
    public int before(int day, int site, int arrival, int departure) {
        if (closed.isEmpty()) {
            return 0;
        }
        int over = 0;
        for (Closed time : closed.getOrDefault(new Lane(day, site), List.of())) {
            if (time.from < departure && arrival < time.until) {
                return BANNED;
            }
            over += time.until <= arrival ? 1 : 0;
        }
        return over;
    }

    /** Whether a turn may be worked on a day, by itself: its stay is asked for elsewhere. */
    public boolean allows(int day, Chance turn) {
        if (before(day, turn.site(), turn.start(), turn.end()) == BANNED) {
            return false;
        }
        // Asked at every step of a search.
        for (Quiet time : quiet.isEmpty() ? List.<Quiet>of() : quiet.getOrDefault(day, List.of())) {
            if (time.from < turn.end() && turn.start() < time.until) {
                return false;
            }
        }
        for (Silent time : silent.isEmpty() ? List.<Silent>of() : silent.getOrDefault(new Lane(day, turn.site()), List.of())) {
            if (time.bird == turn.bird() && time.from < turn.end() && turn.start() < time.until) {
                return false;
            }
        }
        return true;
    }
}
