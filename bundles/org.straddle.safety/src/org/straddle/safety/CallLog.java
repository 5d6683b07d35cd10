package org.straddle.safety;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.model.Call;
import org.straddle.model.Event;
import org.straddle.model.Policies;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.outlook.itinerary.Drives;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.words.Catalogue;

/** Which check-in calls of an event came, which are due, and which were missed, with the minute in which somebody acts. */
public record CallLog(List<Entry> entries) {

    private static final Catalogue TEXTS = Catalogue.of(CallLog.class);

    /** A call counts for a planned one from so long before it (common practice, no source). */
    private static final Duration EARLY = Duration.ofMinutes(15);

    /** How a planned call stands. */
    public enum State {
        /** Its time has not come. */
        AHEAD,
        CAME,
        /** Its time has come, and nobody needs to act yet. */
        DUE,
        /** It did not come in time: somebody acts. */
        MISSED
    }

    /**
     * A planned call.
     *
     * @param due when it is planned
     * @param actAt when the coordinator acts if it did not come
     * @param call what was noted of it
     */
    public record Entry(Team team, Stay stay, Instant due, Instant actAt, Optional<Call> call, State state) {

        /** Such as "missed". */
        public String stateWord() {
            return TEXTS.text("callState." + state.name());
        }
    }

    public CallLog {
        entries = List.copyOf(entries);
    }

    /** @param now what time it is for whoever asks */
    public static CallLog of(Event event, Instant now) {
        Policies policies = event.getPolicies() != null ? event.getPolicies() : StraddleFactory.eINSTANCE.createPolicies();
        List<Entry> entries = new ArrayList<>();
        for (Stay stay : Itinerary.of(event).stays()) {
            List<Call> calls = Drives.dayOf(stay).map(TeamDay::getCalls).map(List::copyOf).orElse(List.of());
            CheckIns planned = CheckIns.of(stay.window(), policies);
            planned.times().forEach(due -> entries.add(entry(stay, due, planned.actAt(due), calls, now)));
        }
        entries.sort(Comparator.comparing(Entry::due).thenComparing(entry -> entry.team().getNumber()));
        return new CallLog(entries);
    }

    private static Entry entry(Stay stay, Instant due, Instant actAt, List<Call> calls, Instant now) {
        Optional<Call> came = calls.stream().filter(call -> call.getAt() != null && !call.getAt().isBefore(due.minus(EARLY))
                && !call.getAt().isAfter(actAt)).min(Comparator.comparing(call -> Duration.between(due, call.getAt()).abs()));
        State state = came.isPresent() ? State.CAME : now.isBefore(due) ? State.AHEAD : now.isAfter(actAt) ? State.MISSED : State.DUE;
        return new Entry(stay.team(), stay, due, actAt, came, state);
    }

    public List<Entry> missed() {
        return entries.stream().filter(entry -> entry.state() == State.MISSED).toList();
    }

    /** What somebody does about missed calls, or that none was missed. */
    public String sentence() {
        return TEXTS.text("callLog.sentence", "missed", missed().size(), "teams",
                missed().stream().map(entry -> entry.team().getNumber()).distinct().map(String::valueOf).toList());
    }
}
