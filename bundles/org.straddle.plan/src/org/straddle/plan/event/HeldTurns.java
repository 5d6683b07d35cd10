package org.straddle.plan.event;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.straddle.check.Promise;
import org.straddle.check.Promises;
import org.straddle.model.Event;
import org.straddle.model.Revision;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Work;
import org.straddle.plan.problem.Commitment;
import org.straddle.sky.Window;

/**
 * What a new plan should hold on to: the turns of the present plan that may be changed, and those that were published
 * last and that nobody works as published any more because the plan was edited since. Chasers rely on what was
 * published; so once there is a published state, a turn that it does not tell of counts less.
 */
final class HeldTurns {

    /** How much less a turn counts that nobody was told of, once something is published. A choice of ours. */
    static final double UNTOLD = 0.5;

    private final EventNumbers numbers;
    private final Outlook outlook;
    private final Event event;
    private final Optional<Revision> revision;
    private final Map<Turn, Promise> told = new LinkedHashMap<>();
    private final List<Promise> untold = new ArrayList<>();
    private final List<HeldTurn> all = new ArrayList<>();

    private HeldTurns(EventNumbers numbers) {
        this.numbers = numbers;
        outlook = numbers.outlook();
        event = outlook.event();
        revision = Promises.last(event);
        tellApart();
        if (event.getPlan() != null) {
            event.getPlan().getStops().forEach(this::addPlanned);
        }
        untold.forEach(this::addPublished);
    }

    static HeldTurns of(EventNumbers numbers) {
        return new HeldTurns(numbers);
    }

    /** In the order of the plan, and then of the published schedule. */
    List<HeldTurn> all() {
        return Collections.unmodifiableList(all);
    }

    /** What was published last of a turn of the present plan, which may be pinned; empty when it is not as published. */
    Optional<Promise> published(Turn turn) {
        return Optional.ofNullable(told.get(turn));
    }

    /** Whether a turn of the present plan can be worked still as far as sky, site and days go. */
    boolean canBeWorked(Turn turn) {
        return all.stream().filter(held -> held.turn().filter(turn::equals).isPresent())
                .allMatch(held -> !held.ways().isEmpty());
    }

    /** The number of the last published state; 0 when nothing was published. */
    int revision() {
        return revision.map(Revision::getNumber).orElse(0);
    }

    /** Which turns of the plan are what was published; what was published and is nowhere in the plan. */
    private void tellApart() {
        List<Work> works = new ArrayList<>(Itinerary.of(event).turns());
        for (Promise promise : revision.map(Promises::of).orElse(List.of())) {
            Optional<Work> keeping = works.stream().filter(work -> promise.isKeptBy(work.team(),
                    outlook.squares(work.site()), work.bird(), work.window())).findFirst();
            keeping.ifPresentOrElse(work -> {
                told.put(work.turn(), promise);
                works.remove(work);
            }, () -> untold.add(promise));
        }
    }

    private void addPlanned(Stop stop) {
        Optional<KeptStop> whole = KeptStop.of(stop, numbers.replan().from());
        for (Turn turn : stop.getTurns()) {
            if (KeptStop.isKept(turn, numbers.replan().from())) {
                continue;
            }
            Optional<Promise> published = published(turn);
            double worth = numbers.replan().keeping() * (revision.isEmpty() || published.isPresent() ? 1 : UNTOLD);
            List<Commitment> ways = whole.flatMap(known -> KeptStop.usable(turn).flatMap(window -> numbers.commitment(
                    known.team(), known.window(), known.site(), turn.getBird(), window, window.duration(), worth)))
                    .stream().toList();
            all.add(new HeldTurn(Optional.of(turn), published, ways));
        }
    }

    private void addPublished(Promise promise) {
        if (numbers.replan().from().filter(promise.start()::isBefore).isPresent()) {
            return; // it is over, or began without us: nothing can be held any more
        }
        Promised promised = Promised.of(promise, outlook);
        // Of packed turns, each announced to the minute, the longest that keep their promise may not fit beside each other.
        List<Commitment> ways = promised.team().isEmpty() || promised.bird().isEmpty() ? List.of()
                : promised.sites().stream().flatMap(site -> promise.ways().stream().flatMap(way -> numbers.commitment(
                        promised.team().get(), promise.longest(), site, promised.bird().get(), way, promise.shortest(),
                        numbers.replan().keeping()).stream())).distinct().toList();
        all.add(new HeldTurn(Optional.empty(), Optional.of(promise), ways));
    }
}
