package org.straddle.daysheet.fits;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.straddle.model.Ban;
import org.straddle.model.Bird;
import org.straddle.model.Turn;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Bans;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.outlook.itinerary.BirdHours;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.PlanRule;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.TurnPass;
import org.straddle.outlook.itinerary.Work;
import org.straddle.sky.Pass;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;

/**
 * Tries a turn at other times and in other stops, without changing anything: says which rules would be broken there,
 * and where in a stop none would be. A window breaks no rule exactly when none of its moments does, so the free
 * windows of a stop say all there is to say about it.
 */
final class TurnTrial {

    private static final Catalogue TEXTS = Catalogue.of(TurnTrial.class);

    /** Nobody makes a contact in less. Common practice, no source. */
    private static final Duration LEAST = Duration.ofMinutes(1);
    private static final Window EVER = new Window(Instant.EPOCH, Instant.parse("9999-12-31T00:00:00Z"));

    private final Outlook outlook;
    private final Turn turn;
    private final Bird bird;
    private final Bans bans;
    private final List<Work> others;

    /** @param turn of the outlook's event, or a new one that is in no plan yet; it has a bird */
    TurnTrial(Outlook outlook, Itinerary plan, Turn turn) {
        this.outlook = outlook;
        this.turn = turn;
        this.bird = turn.getBird();
        this.bans = Bans.of(outlook.event());
        this.others = plan.turns().stream().filter(work -> work.turn() != turn).toList();
    }

    List<Obstacle> at(Stay stay, Window window) {
        List<Obstacle> obstacles = new ArrayList<>(StationTime.obstacles(outlook, stay.window(), window));
        Work work = work(stay, window);
        pass(work, obstacles);
        bird(work, obstacles);
        obstacles.addAll(CrewLimits.onTurns(outlook, stay.team(), stay.site(), bird));
        for (Work other : others) {
            Meeting.gap(outlook, work, other).ifPresent(obstacles::add);
            Meeting.channel(outlook, work, other).ifPresent(obstacles::add);
            Meeting.frequency(outlook, work, other).ifPresent(obstacles::add);
        }
        for (Ban ban : bans.onTurn(stay.team(), stay.site(), bird, window)) {
            obstacles.add(StopTrial.banned(ban));
        }
        return obstacles;
    }

    /** The longest windows within the stop's passes in which nothing is wrong, a minute or more, by time, whole seconds. */
    List<Window> free(Stay stay) {
        List<Window> free = new ArrayList<>();
        for (Window pass : passes(stay)) {
            pass.intersection(stay.window()).ifPresent(within -> FittingTimes.of(turningPoints(stay, within), within,
                    second -> at(stay, new Window(second, second.plusSeconds(1))).isEmpty()
                            && pass.contains(new Window(second, second.plusSeconds(1))))
                    .stream().map(range -> new Window(range.first(), range.last().plusSeconds(1)))
                    .filter(window -> window.duration().compareTo(LEAST) >= 0).forEach(free::add));
        }
        return List.copyOf(free);
    }

    private Work work(Stay stay, Window window) {
        return new Work(turn, stay.stop(), stay.team(), stay.site(), bird, window);
    }

    /** Where nothing is known of the bird's passes, no time is wrong for want of one. */
    private List<Window> passes(Stay stay) {
        boolean known = outlook.hasSpan() && outlook.isPlaced(stay.site())
                && outlook.elementSet(bird, stay.window().start()).isPresent();
        return known
                ? outlook.passes(stay.site(), bird).stream().map(SitePass::pass).map(Pass::window)
                        .filter(stay.window()::overlaps).toList()
                : List.of(EVER);
    }

    private void pass(Work work, List<Obstacle> obstacles) {
        if (TurnPass.isMissing(outlook, work)) {
            obstacles.add(new Obstacle(PlanRule.TURN_WITHOUT_PASS, TEXTS.text("pass.none",
                    "bird", Naming.name(bird), "site", Naming.name(work.site()))));
        }
        TurnPass.left(outlook, work).ifPresent(pass -> obstacles.add(new Obstacle(PlanRule.TURN_BELOW_MASK,
                TEXTS.text("pass.left", "times", Say.during(pass)))));
    }

    private void bird(Work work, List<Obstacle> obstacles) {
        BirdHours.broken(outlook, work).forEach(rule -> obstacles.add(new Obstacle(rule, switch (rule) {
            case BIRD_NOT_WORKING -> TEXTS.text("bird.dead", "bird", Naming.name(bird));
            case BIRD_OFF -> TEXTS.text("bird.off", "bird", Naming.name(bird));
            default -> TEXTS.text("bird.dark", "bird", Naming.name(bird));
        })));
    }

    private Set<Instant> turningPoints(Stay stay, Window within) {
        Set<Instant> points = new HashSet<>();
        points.add(stay.window().start().plus(outlook.policies().setUp()));
        points.add(stay.window().end().minus(outlook.policies().takeDown()));
        for (Work other : others) {
            if (other.team() == stay.team()) {
                points.add(other.window().start().minus(outlook.policies().turnGap()));
                points.add(other.window().end().plus(outlook.policies().turnGap()));
            } else if (other.bird() == bird && other.window().overlaps(within)) {
                addEnds(Stream.of(other.window()), points);
                addEnds(outlook.sharedFootprint(bird, within, stay.site(), other.site()).stream(), points);
            }
        }
        addEnds(outlook.switchedOn(bird, within).stream(), points);
        if (bird.isLitOnly()) {
            addEnds(outlook.lit(bird, within).stream(), points);
        }
        bans.all().forEach(ban -> addEnds(Bans.period(ban, within).stream(), points));
        // A window of one second is tried for each moment, so what ends within a second turns one second early.
        points.addAll(points.stream().map(point -> point.minusSeconds(1)).toList());
        return points;
    }

    private static void addEnds(Stream<Window> windows, Set<Instant> points) {
        windows.forEach(window -> {
            points.add(window.start());
            points.add(window.end());
        });
    }
}
