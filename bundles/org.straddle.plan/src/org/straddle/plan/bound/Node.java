package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.List;

/** The plans that keep to some {@link Decision}s, and what {@link ColumnGeneration} knows of them by now. */
final class Node {

    /** Of the bound. */
    private static final double CLEARLY = 1e-5;

    private final List<Decision> decisions;
    private double bound;
    private double mixed = Double.NEGATIVE_INFINITY;
    private Prices best;
    private int rounds;
    private int stale;
    private int inVain;
    private int nextTry;
    private boolean done;

    private Node(List<Decision> decisions, double bound, Prices best) {
        this.decisions = List.copyOf(decisions);
        this.bound = bound;
        this.best = best;
    }

    /** All plans. */
    static Node root() {
        return new Node(List.of(), Double.POSITIVE_INFINITY, null);
    }

    /** Those of its plans that keep to one decision more: what holds for all of them holds for these. */
    Node with(Decision decision) {
        List<Decision> more = new ArrayList<>(decisions);
        more.add(decision);
        return new Node(more, bound, best);
    }

    List<Decision> decisions() {
        return decisions;
    }

    /** No plan of the node is worth more; negative infinity when there is none. */
    double bound() {
        return bound;
    }

    /** What a mix of its routes was worth before the last round. */
    double mixed() {
        return mixed;
    }

    /** Prices that gave the bound; null before there is one. */
    Prices best() {
        return best;
    }

    /** Whether it is time to look for a way to part it: each time that nothing was found it has to be twice as old. */
    boolean isTimeToTry() {
        return rounds >= nextTry;
    }

    void triedInVain() {
        nextTry = 2 * rounds;
    }

    /** Rounds since one that lowered the bound by as much as could ever be told. */
    int roundsInVain() {
        return inVain;
    }

    /** Whether column generation can make the bound no better. */
    boolean isDone() {
        return done;
    }

    /**
     * Hears of the bound that a round gave.
     *
     * @param ofMix what a mix of the routes known before was worth
     * @param close what counts as no better
     */
    void took(Prices prices, double here, double ofMix, double close) {
        rounds++;
        mixed = ofMix;
        inVain = Double.isInfinite(bound) || here < bound - CLEARLY * Math.abs(bound) ? 0 : inVain + 1;
        if (here < bound) {
            stale = here < bound - close ? 0 : stale;
            bound = here;
            best = prices;
        }
    }

    /** Whether there were fewer rounds than so many in which nothing but learning came of it; this is one. */
    boolean mayLearn(int most) {
        return stale++ < most;
    }

    /**
     * Hears of the end of a round.
     *
     * @param fresh    whether it found anything new
     * @param atNewest whether it asked at the newest prices
     * @param patience as many rounds in vain as it counts for at least when it found nothing
     */
    void ended(boolean fresh, boolean atNewest, int patience) {
        inVain = fresh ? inVain : Math.max(inVain, patience);
        done = !fresh && atNewest;
    }

    void isProven() {
        done = true;
    }
}
