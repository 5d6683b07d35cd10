package org.straddle.kit.team;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.straddle.kit.work.Task;
import org.straddle.kit.work.Work;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.Team;
import org.straddle.model.WorkMode;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.things.Band;

/** What the plan asks of a team's kit: the birds of its turns, by mode and bands. */
public final class TeamTasks {

    private TeamTasks() {
    }

    /** What it must be able to do. A linear bird asks for hearing oneself where the event says so. */
    public static List<Task> planned(Team team, Itinerary itinerary) {
        return tasks(team, itinerary, mode -> switch (mode) {
            case FM -> Work.FM;
            case LINEAR -> hearsItself(team) ? Work.LINEAR_FULL_DUPLEX : Work.LINEAR_HALF_DUPLEX;
            case DATA -> Work.DATA;
        });
    }

    /** Other ways to work the same birds, and what shows the squares afterwards. */
    public static List<Task> further(Team team, Itinerary itinerary) {
        List<Task> others = tasks(team, itinerary, mode -> switch (mode) {
            case FM -> Work.HANDHELD_VOICE;
            case LINEAR -> hearsItself(team) ? Work.LINEAR_HALF_DUPLEX : Work.LINEAR_FULL_DUPLEX;
            case DATA -> null;
        });
        return itinerary.of(team).isEmpty() ? others : Stream.concat(others.stream(), Stream.of(Task.proof())).toList();
    }

    private static boolean hearsItself(Team team) {
        return team.eContainer() instanceof Event event && event.getPolicies() != null && event.getPolicies().isFullDuplexOnLinear();
    }

    private static List<Task> tasks(Team team, Itinerary itinerary, java.util.function.Function<WorkMode, Work> way) {
        Set<Task> tasks = new LinkedHashSet<>();
        itinerary.of(team).stream().flatMap(stay -> stay.turns().stream()).map(turn -> turn.bird()).distinct()
                .filter(bird -> way.apply(bird.getMode()) != null)
                .forEach(bird -> tasks.add(task(way.apply(bird.getMode()), bird)));
        return List.copyOf(tasks);
    }

    private static Task task(Work work, Bird bird) {
        return new Task(work, Band.ofUplink(bird).map(Band::label).orElse(""),
                Band.ofDownlink(bird).map(Band::label).orElse(""));
    }
}
