package org.straddle.worth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

import org.straddle.grid.Square;

/**
 * What turns are worth together, in chasers expected to be served with a square they needed: over squares and groups the
 * sum of {@code needed · (1 − Π(1 − p))} over the turns from sites that claim the square. It does not depend on the order
 * of the turns, and another turn never brings more when there are more others.
 */
public final class PlanWorth {

    private final List<ChaserGroup> groups;
    private final Collection<Square> wanted;
    private final SortedMap<Square, double[]> unserved = new TreeMap<>();
    private final SortedMap<Square, Integer> turns = new TreeMap<>();

    /**
     * @param wanted squares that somebody may need: those of which it is told what is still owed
     */
    public PlanWorth(List<ChaserGroup> groups, Collection<Square> wanted, Collection<TurnChance> plan) {
        this.groups = List.copyOf(groups);
        this.wanted = List.copyOf(wanted);
        plan.forEach(turn -> turn.squares().forEach(square -> add(square, turn)));
    }

    private void add(Square square, TurnChance turn) {
        double[] left = unserved.computeIfAbsent(square, any -> ones());
        for (int g = 0; g < left.length; g++) {
            left[g] *= 1 - turn.groups().get(g).probability();
        }
        turns.merge(square, 1, Integer::sum);
    }

    private double[] ones() {
        double[] ones = new double[groups.size()];
        Arrays.fill(ones, 1);
        return ones;
    }

    /** Expected chasers served. */
    public double served() {
        return unserved.keySet().stream().mapToDouble(this::served).sum();
    }

    /** Expected chasers served with one square. */
    public double served(Square square) {
        double sum = 0;
        for (int g = 0; g < groups.size(); g++) {
            sum += served(square, g);
        }
        return sum;
    }

    private double served(Square square, int group) {
        double[] left = unserved.get(square);
        return left == null ? 0 : groups.get(group).needs().of(square) * (1 - left[group]);
    }

    /** Contacts that chasers want, served or not. */
    public double wanted() {
        return squares().stream().mapToDouble(this::wanted).sum();
    }

    /** How many need a square. */
    public double wanted(Square square) {
        return groups.stream().mapToDouble(group -> group.needs().of(square)).sum();
    }

    /** How many need a square and are not expected to get it. */
    public double owed(Square square) {
        return wanted(square) - served(square);
    }

    /** Turns that work a square. */
    public int turns(Square square) {
        return turns.getOrDefault(square, 0);
    }

    /** Squares that somebody may need or that are worked, in order. */
    public List<Square> squares() {
        SortedMap<Square, Boolean> all = new TreeMap<>();
        wanted.forEach(square -> all.put(square, true));
        unserved.keySet().forEach(square -> all.put(square, true));
        return List.copyOf(all.keySet());
    }

    /**
     * What the plan is to one group.
     *
     * @param served expected contacts
     * @param wanted all contacts that the group wants
     */
    public record OfGroup(ChaserGroup group, double served, double wanted) {
    }

    /** By group, in their order. */
    public List<OfGroup> byGroup() {
        List<OfGroup> all = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            int group = g;
            all.add(new OfGroup(groups.get(g), squares().stream().mapToDouble(square -> served(square, group)).sum(),
                    squares().stream().mapToDouble(square -> groups.get(group).needs().of(square)).sum()));
        }
        return Collections.unmodifiableList(all);
    }

    /** What the plan would lose without one of its turns. */
    public double gain(TurnChance turn) {
        return gain(List.of(turn));
    }

    /** What the plan would lose without some of its turns. */
    public double gain(Collection<TurnChance> some) {
        SortedMap<Square, double[]> ofSome = new PlanWorth(groups, List.of(), some).unserved;
        double sum = 0;
        for (var square : ofSome.entrySet()) {
            double[] left = unserved.getOrDefault(square.getKey(), square.getValue());
            for (int g = 0; g < left.length; g++) {
                sum += groups.get(g).needs().of(square.getKey()) * left[g] * (1 / square.getValue()[g] - 1);
            }
        }
        return sum;
    }

    /** What the plan would gain by one more turn. */
    public double more(TurnChance turn) {
        return turn.squares().stream().mapToDouble(square -> more(square, turn)).sum();
    }

    /** What the plan would gain by some more turns. */
    public double more(Collection<TurnChance> some) {
        double sum = 0;
        for (var square : new PlanWorth(groups, List.of(), some).unserved.entrySet()) {
            double[] left = unserved.getOrDefault(square.getKey(), ones());
            for (int g = 0; g < left.length; g++) {
                sum += groups.get(g).needs().of(square.getKey()) * left[g] * (1 - square.getValue()[g]);
            }
        }
        return sum;
    }

    /** What it would gain in one square of the turn. */
    public double more(Square square, TurnChance turn) {
        double sum = 0;
        double[] left = unserved.getOrDefault(square, ones());
        for (int g = 0; g < left.length; g++) {
            sum += groups.get(g).needs().of(square) * left[g] * turn.groups().get(g).probability();
        }
        return sum;
    }
}
