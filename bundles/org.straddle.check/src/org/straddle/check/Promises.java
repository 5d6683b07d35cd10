package org.straddle.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.model.Event;
import org.straddle.model.Operator;
import org.straddle.model.Revision;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;

/**
 * What an announcement promises to chasers: which squares are on which bird, when, on what frequency, and under which
 * call signs. Two states of a plan promise the same when their lines are equal.
 *
 * @param all   one for each turn, in order of time
 * @param facts digest of the lines and of the words at the head of the announcement
 */
public record Promises(List<Promise> all, String facts) {

    public Promises {
        all = List.copyOf(all);
    }

    /**
     * What differs from an earlier state.
     *
     * @param dropped promised then and not now
     * @param added   promised now and not then
     * @param retuned promised then and now, on another frequency
     */
    public record Change(List<Promise> dropped, List<Promise> added, List<Retuned> retuned) {

        public boolean isNothing() {
            return dropped.isEmpty() && added.isEmpty() && retuned.isEmpty();
        }
    }

    /**
     * Turns on a bird that are as they were but for their frequency.
     *
     * @param before mode and frequency in words, like {@code now}
     */
    public record Retuned(String bird, String before, String now, int turns) {
    }

    public static Promises of(Outlook outlook) {
        Event event = outlook.event();
        List<Promise> all = Itinerary.of(event).turns().stream().map(work -> Promise.of(work, outlook)).toList();
        String lines = all.stream().map(Promise::line).collect(Collectors.joining("\n"));
        String teams = event.getTeams().stream().map(Promises::signs).collect(Collectors.joining("\n"));
        return new Promises(all, Digest.of(lines, event.getName(), event.getClub(),
                event.getFirstDay(), event.getLastDay(), outlook.zone(), event.getAnnouncementText(), teams));
    }

    /** What was published last; empty when nothing was. */
    public static Optional<Revision> last(Event event) {
        return last(event.getRevisions().stream());
    }

    /** What was published last under a lower number; empty when nothing was. */
    public static Optional<Revision> lastBefore(int number, Event event) {
        return last(event.getRevisions().stream().filter(revision -> revision.getNumber() < number));
    }

    /** Of two with one number, which only a file can bring, the later one. */
    private static Optional<Revision> last(Stream<Revision> revisions) {
        return revisions.reduce((a, b) -> b.getNumber() >= a.getNumber() ? b : a);
    }

    /** What a published state promised. */
    public static List<Promise> of(Revision revision) {
        return revision.getPromises().stream().flatMap(turn -> Promise.of(turn).stream()).toList();
    }

    /** @param before of an earlier state */
    public Change since(List<Promise> before) {
        List<Promise> dropped = new ArrayList<>(without(before, all));
        List<Promise> added = new ArrayList<>(without(all, before));
        Map<Retuned, Integer> turns = new LinkedHashMap<>();
        for (Promise old : List.copyOf(dropped)) {
            added.stream().filter(old::differsInFrequency).findFirst().ifPresent(now -> {
                dropped.remove(old);
                added.remove(now);
                turns.merge(new Retuned(now.bird(), old.frequency(), now.frequency(), 1), 1, Integer::sum);
            });
        }
        return new Change(List.copyOf(dropped), List.copyOf(added), turns.entrySet().stream().map(entry ->
                new Retuned(entry.getKey().bird(), entry.getKey().before(), entry.getKey().now(), entry.getValue())).toList());
    }

    /** Those that read like none of the others; each of the others stands for one. */
    private static List<Promise> without(List<Promise> promises, List<Promise> others) {
        List<String> lines = others.stream().map(Promise::line).collect(Collectors.toCollection(ArrayList::new));
        List<Promise> left = new ArrayList<>();
        for (Promise promise : promises) {
            if (!lines.remove(promise.line())) {
                left.add(promise);
            }
        }
        return left;
    }

    private static String signs(Team team) {
        return team.getNumber() + " " + team.getOperators().stream().filter(operator -> !operator.eIsProxy())
                .map(Operator::getCallSign).map(Promise::text).collect(Collectors.joining(" "));
    }
}
