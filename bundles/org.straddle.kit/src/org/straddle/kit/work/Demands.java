package org.straddle.kit.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;

import org.straddle.kit.work.Formula.AtLeast;
import org.straddle.kit.work.Requirement.Kind;

/**
 * What a task asks of the pieces, each requirement a formula; the task can be done when all hold. What each mode needs is
 * common practice, no source.
 */
final class Demands {

    private final Pieces pieces;
    private final Task task;
    private final int carried;
    private final Ability transmit;
    private final Ability receive;
    private final Map<Requirement, Formula> formulas = new LinkedHashMap<>();

    private Demands(Pieces pieces, Task task, int carried) {
        this.pieces = pieces;
        this.task = task;
        this.carried = carried;
        this.transmit = Ability.of(Function.TRANSMIT, task.uplink());
        this.receive = Ability.of(Function.RECEIVE, task.downlink());
    }

    static Map<Requirement, Formula> of(Task task, Pieces pieces) {
        return of(task, pieces, pieces.gear().size());
    }

    /**
     * @param carried how many of the gear, from the first, are in the kit; the others are on offer, and stand in for marked
     *                gear too when they do all that it does
     */
    static Map<Requirement, Formula> of(Task task, Pieces pieces, int carried) {
        Demands demands = new Demands(pieces, task, carried);
        switch (task.work()) {
            case FM, LINEAR_HALF_DUPLEX -> demands.inTurn();
            case LINEAR_FULL_DUPLEX -> demands.atOnce();
            case DATA -> {
                demands.inTurn();
                demands.one(Kind.COMPUTER, Function.COMPUTER, "");
            }
            case HANDHELD_VOICE -> demands.handheld();
            case PROOF -> {
                demands.one(Kind.RECORDING, Function.RECORDING, "");
                demands.one(Kind.POSITION, Function.POSITION, "");
                demands.one(Kind.TIME, Function.TIME, "");
            }
        }
        if (task.work() != Work.PROOF) {
            demands.marked();
        }
        return demands.formulas;
    }

    private void inTurn() {
        radios();
        lines();
    }

    private void radios() {
        one(Kind.TRANSMIT, Function.TRANSMIT, task.uplink());
        one(Kind.RECEIVE, Function.RECEIVE, task.downlink());
        antennas();
        one(Kind.PUSH_TO_TALK, Function.PUSH_TO_TALK, "");
        one(Kind.POWER, Function.POWER, "");
    }

    private void antennas() {
        one(Kind.ANTENNA, Function.ANTENNA, task.uplink());
        one(Kind.ANTENNA, Function.ANTENNA, task.downlink());
    }

    private void lines() {
        one(Kind.FEED_LINE, Function.FEED_LINE, task.uplink());
        one(Kind.FEED_LINE, Function.FEED_LINE, task.downlink());
    }

    /**
     * Two different pieces, one for each link, exist exactly when there is one for each link and two in all (Hall's
     * theorem for two sets).
     */
    private void atOnce() {
        radios();
        lines();
        Formula duplexRadio = that(1, gear -> gear.duplex() && gear.gives(transmit) && gear.gives(receive));
        Formula twoRadios = that(2, gear -> gear.gives(transmit) || gear.gives(receive));
        formulas.put(new Requirement(Kind.TWO_RADIOS, "", ""), Formula.any(duplexRadio, twoRadios));
        Ability lineUp = Ability.of(Function.FEED_LINE, task.uplink());
        Ability lineDown = Ability.of(Function.FEED_LINE, task.downlink());
        Formula twoLines = that(2, gear -> gear.gives(lineUp) || gear.gives(lineDown));
        Ability diplexUp = Ability.of(Function.DIPLEXER, task.uplink());
        Ability diplexDown = Ability.of(Function.DIPLEXER, task.downlink());
        Formula diplexer = that(1, gear -> gear.gives(diplexUp) && gear.gives(diplexDown));
        formulas.put(new Requirement(Kind.TWO_FEED_LINES, "", ""), Formula.any(duplexRadio, twoLines, diplexer));
    }

    private void handheld() {
        Ability talk = Ability.of(Function.PUSH_TO_TALK);
        Ability power = Ability.of(Function.POWER);
        formulas.put(new Requirement(Kind.HANDHELD, "", ""), that(1, gear -> gear.gives(transmit) && gear.gives(receive)
                && gear.gives(talk) && gear.gives(power)));
        antennas();
    }

    private void one(Kind kind, Function function, String band) {
        Ability wanted = Ability.of(function, band);
        formulas.put(new Requirement(kind, band, ""), that(1, gear -> gear.gives(wanted)));
    }

    /** What the club marked as needed must be there, itself or gear that stands in for it. */
    private void marked() {
        List<Gear> marked = new ArrayList<>(pieces.gear());
        marked.removeIf(gear -> !gear.needed() || !gear.isFor(task.work()));
        for (Gear gear : marked) {
            formulas.put(new Requirement(Kind.MARKED_ITEM, "", gear.name()), that(1, other -> other == gear
                    || other.spareFor().filter(gear.id()::equals).isPresent() || isOffered(other) && doesAllOf(gear, other)));
        }
    }

    private boolean isOffered(Gear gear) {
        return pieces.gear().subList(carried, pieces.gear().size()).stream().anyMatch(other -> other == gear);
    }

    private static boolean doesAllOf(Gear marked, Gear other) {
        return !marked.gives().isEmpty() && marked.gives().stream().allMatch(other::gives) && (!marked.duplex() || other.duplex());
    }

    private Formula that(int count, Predicate<Gear> wanted) {
        return new AtLeast(count, IntStream.of(pieces.that(gear -> gear.isFor(task.work()) && wanted.test(gear))).toArray());
    }
}
