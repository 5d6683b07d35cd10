package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

import org.straddle.plan.problem.PlanProblem;

/**
 * Parts all plans where column generation by itself leaves too much room above them (<em>branch and price</em>): a
 * {@link Decision} makes two {@link Node}s of one, and each has a bound of its own. The highest of them holds for all plans,
 * so the node that has it is the one to work at (<em>best first</em>). Nodes that hold nothing better than the best plan known
 * are left alone.
 *
 * <p>Of several decisions that the mix at a node has made by halves, each is tried on the routes known by now, and the one is
 * taken that lowers both nodes most (<em>strong branching</em> with the product rule). Sites and squares of a whole day are
 * what is decided about: a single turn can give way to one like it, so that next to nothing follows from it.
 */
final class BranchTree {

    /** Relative to the bound: nodes so little above the best plan are done with. */
    private static final double EQUAL = 1e-7;

    /**
     * A node is parted before column generation is through with it when no more than this part of what its bound lies above
     * the best plan could be gained by that.
     */
    private static final double LITTLE_LEFT = 0.5;

    /** And when of what a mix is worth more than the best plan, parting takes at least so much away in both nodes. */
    private static final double WORTHWHILE = 0.2;

    /** Rounds that lower a bound no more before its node is parted all the same. */
    private static final int MOST_IN_VAIN = 30;

    /** Decisions tried, those first that are made most by halves. */
    private static final int MOST_TRIED = 8;

    /** A share of a mix that is all or nothing. */
    private static final double WHOLE = 0.02;

    /** Of what is needed, a node that falls by less counts for so much: one that falls by much is better than none. */
    private static final double LEAST = 1e-3;

    private final PlanProblem problem;
    private final ColumnGeneration columns;
    private final List<Set<Integer>> sites;

    /** Those that can be decided about: their work is passes, and no fixed stay parts them in gaps. */
    private final List<Integer> days;
    private final List<Node> open = new ArrayList<>();
    private boolean parted;

    /** The highest bound of the nodes that are done with. */
    private double settled = Double.NEGATIVE_INFINITY;

    BranchTree(PlanProblem problem, ColumnGeneration columns) {
        this.problem = problem;
        this.columns = columns;
        sites = sites();
        days = IntStream.range(0, problem.windows().isEmpty() ? problem.days().size() : 0)
                .filter(day -> problem.fixed().stream().noneMatch(stay -> stay.day() == day)).boxed().toList();
        open.add(columns.root());
    }

    /** Those of each square, and each by itself. */
    private List<Set<Integer>> sites() {
        Set<Set<Integer>> all = new LinkedHashSet<>();
        for (int site = 0; site < problem.siteCount(); site++) {
            all.add(Set.of(site));
        }
        for (int square = 0; square < problem.squareCount(); square++) {
            Set<Integer> ofSquare = new LinkedHashSet<>();
            for (int site = 0; site < problem.siteCount(); site++) {
                if (problem.squaresOfSite().get(site).contains(square)) {
                    ofSquare.add(site);
                }
            }
            all.add(Set.copyOf(ofSquare));
        }
        all.remove(Set.of());
        return List.copyOf(all);
    }

    /** No plan is worth more than this or the best plan known. */
    double bound() {
        return Math.max(settled, highest().map(Node::bound).orElse(Double.NEGATIVE_INFINITY));
    }

    /** Whether more rounds make the bound no better. */
    boolean isDone() {
        return highest().map(Node::bound).orElse(Double.NEGATIVE_INFINITY) <= settled;
    }

    /** Whether it has more than its root. */
    boolean isParted() {
        return parted;
    }

    private Optional<Node> highest() {
        return open.stream().max(Comparator.comparingDouble(Node::bound));
    }

    /**
     * One round of column generation where the bound is highest, and two nodes of that one when it is time.
     *
     * @param known worth of the best plan known
     */
    void round(double known) {
        if (isDone()) {
            return;
        }
        Node node = highest().orElseThrow();
        if (!node.isDone()) {
            columns.round(node);
        }
        if (node.bound() - known <= EQUAL * Math.abs(node.bound())) {
            settle(node);
        } else if (node.isDone()) {
            part(node, known, 0);
            if (open.contains(node)) {
                settle(node);
            }
        } else if (node.roundsInVain() > 0 && node.roundsInVain() % MOST_IN_VAIN == 0) {
            part(node, known, 0);
        } else if (node.isTimeToTry() && node.bound() - node.mixed() <= LITTLE_LEFT * (node.bound() - known)) {
            part(node, known, WORTHWHILE);
        }
    }

    private void settle(Node node) {
        open.remove(node);
        settled = Math.max(settled, node.bound());
    }

    /**
     * @param known worth of the best plan
     * @param least part of what the mix is worth more than that plan which both nodes have to lose
     */
    private void part(Node node, double known, double least) {
        if (days.isEmpty()) {
            return;
        }
        double mixed = columns.mixed(node);
        double needed = mixed > known ? mixed - known : node.bound() - mixed;
        double little = LEAST * needed;
        double best = Double.NEGATIVE_INFINITY;
        Decision chosen = null;
        for (Decision decision : undecided(node)) {
            if (columns.isStopped()) {
                return;
            }
            double one = Math.min(needed, mixed - columns.mixed(node.with(decision)));
            double other = Math.min(needed, mixed - columns.mixed(node.with(decision.opposite())));
            double score = Math.max(little, one) * Math.max(little, other);
            if (Math.min(one, other) >= least * needed && score > best) {
                best = score;
                chosen = decision;
            }
        }
        if (chosen == null) {
            node.triedInVain();
        } else {
            parted = true;
            open.remove(node);
            open.add(node.with(chosen));
            open.add(node.with(chosen.opposite()));
        }
    }

    /**
     * Where the mix has made everything by whole, what is left of its bound is what pricing pays too much, often for sites that
     * the mix does not visit: without them it can pay less, and with them the mix is poorer.
     */
    private List<Decision> overpaid() {
        return columns.found().stream().filter(route -> days.contains(route.day())).flatMap(route -> route.stays().stream()
                .map(stay -> new Decision(route.day(), Set.of(stay.site()), true))).distinct()
                .filter(visit -> columns.visited(visit.day(), visit.sites()) <= WHOLE).toList();
    }

    /** What the last mix has made by halves. A day can be made to make so many visits only. */
    private List<Decision> undecided(Node node) {
        record Half(Decision decision, double share) {
        }
        List<Half> halves = new ArrayList<>();
        for (int day : days) {
            if (Decision.of(day, node.decisions()).stream().filter(Decision::visits).count() < Memory.MOST_VISITS) {
                for (Set<Integer> some : sites) {
                    double share = columns.visited(day, some);
                    if (share > WHOLE && share < 1 - WHOLE) {
                        halves.add(new Half(new Decision(day, some, true), share));
                    }
                }
            }
        }
        if (halves.isEmpty()) {
            return overpaid();
        }
        return halves.stream().sorted(Comparator.comparingDouble(half -> Math.abs(half.share - 0.5))).limit(MOST_TRIED)
                .map(Half::decision).toList();
    }
}
