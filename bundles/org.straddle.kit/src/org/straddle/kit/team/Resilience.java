package org.straddle.kit.team;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

import org.straddle.kit.work.Addition;
import org.straddle.kit.work.Answer;
import org.straddle.kit.work.Gear;
import org.straddle.kit.work.Remedy;
import org.straddle.kit.work.Task;
import org.straddle.model.Team;
import org.straddle.outlook.itinerary.Itinerary;

/**
 * What a team's kit says to its plan: each way of working, what ends it, what to add, and what is carried for nothing.
 *
 * @param planned  what the plan asks for
 * @param further  other ways to work the same birds, and proof of the squares
 * @param idle     gear for working of which one piece could stay at home without another single point or pair
 */
public record Resilience(Inventory inventory, List<Answer> planned, List<Answer> further, List<Gear> idle) {

    public static Resilience of(Team team, Itinerary itinerary) {
        Inventory inventory = Inventory.of(team);
        List<Gear> kit = inventory.carried();
        List<Task> tasks = TeamTasks.planned(team, itinerary);
        List<Answer> planned = tasks.stream().map(task -> Answer.of(task, kit)).toList();
        List<Answer> further = TeamTasks.further(team, itinerary).stream().map(task -> Answer.of(task, kit)).toList();
        return new Resilience(inventory, planned, further, idle(kit, planned, further));
    }

    /** What ends planned work by failing alone, each once. */
    public List<SinglePoint> singlePoints() {
        return SinglePoint.in(planned);
    }

    /**
     * The cheapest piece on offer that keeps everything possible which fails with an item.
     *
     * @return empty where nothing helps, or where different work wants different pieces
     */
    public Optional<Gear> remedy(SinglePoint point) {
        List<Optional<Gear>> remedies = point.stops().stream().map(answer -> remedy(answer, point.gear())).distinct().toList();
        return remedies.size() == 1 ? remedies.get(0) : Optional.empty();
    }

    /** Only where something works: a kit that can do nothing carries nothing too much. */
    private static List<Gear> idle(List<Gear> kit, List<Answer> planned, List<Answer> further) {
        if (planned.stream().noneMatch(Answer::possible)) {
            return List.of();
        }
        return kit.stream().filter(gear -> gear.pieces() > 0 && !gear.gives().isEmpty() && !gear.needed())
                .filter(gear -> !supplies(gear, kit))
                .filter(gear -> planned.stream().noneMatch(answer -> answer.matters().contains(gear))
                        && further.stream().noneMatch(answer -> answer.matters().contains(gear))).toList();
    }

    /** What other gear needs is carried for that gear, even where no bird asks for it. */
    private static boolean supplies(Gear gear, List<Gear> kit) {
        return kit.stream().anyMatch(other -> other != gear && other.needs().stream()
                .anyMatch(need -> gear.gives().stream().anyMatch(given -> given.meets(need))));
    }

    /**
     * What makes all that is planned survive any single failure.
     *
     * @param limit when it is over, the best found so far is taken and says so
     * @return empty when nothing on offer can
     */
    public Optional<Addition> addition(Duration limit) {
        return Addition.cheapest(planned.stream().map(Answer::task).toList(), inventory.carried(), inventory.offered(), limit);
    }

    /** One piece from stock or shopping list that keeps a task possible when this fails. */
    public Optional<Gear> remedy(Answer answer, Gear failed) {
        return Remedy.of(answer.task(), inventory.carried(), inventory.offered(), failed);
    }
}
