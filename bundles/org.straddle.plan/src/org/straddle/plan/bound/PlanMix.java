package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;

import org.straddle.plan.problem.BirdMoments;
import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.PlanProblem;
import org.straddle.plan.problem.Route;
import org.straddle.plan.problem.Stay;

/**
 * The best plan that takes its stops from a pool of routes: which route each day follows, and which of all passes
 * within its stops each team works (where work has windows of time instead, a route stays as it is), chosen together by the constraint solver CP-SAT. That is where the search around
 * it is weak: teams that contend for the same passes have to give way to each other all at once.
 *
 * <p>One object answers one question. Effort is counted in the solver's own measure and it runs on one thread, so
 * the answer is the same on every machine. Needs {@link NativeSolvers}.
 */
final class PlanMix {

    /** Worths become whole numbers for the solver; finer than any worth that is told. */
    private static final double SCALE = 1e6;
    private static final int AMOUNT_SCALE = 1000;
    private static final int SHARE_SCALE = 10_000;

    /** A turn that serves everybody: an amount that no longer tells from more. */
    private static final double CERTAIN = 10;

    /** Solutions that are drawn nearer to the curve, at most. */
    private static final int MOST_ROUNDS = 5;

    /** Relative to the worth: closer to the curve is not asked for. */
    private static final double CLOSE = 1e-4;

    /** Where the lines touch at first. */
    private static final double[] TOUCHES = { 0, 0.08, 0.17, 0.28, 0.4, 0.55, 0.72, 0.92, 1.15, 1.45, 1.85, 2.4, 3.2 };

    private final PlanProblem problem;
    private final ChanceTable table;
    private final BirdMoments moments;
    private final OpenWants wants;
    private final List<Route> pool;
    private final CpModel model = new CpModel();
    private final CpSolver solver = new CpSolver();
    private volatile boolean stopped;
    private final List<BoolVar> chosen = new ArrayList<>();
    private final List<Map<Integer, BoolVar>> turns = new ArrayList<>();
    private final List<Share> shares = new ArrayList<>();
    private final LinearExprBuilder worth = LinearExpr.newBuilder();

    /** @param pool at least one route for each day that can be driven; those that cannot are left out */
    PlanMix(PlanProblem problem, ChanceTable table, BirdMoments moments, OpenWants wants, Collection<Route> pool) {
        this.problem = problem;
        this.table = table;
        this.moments = moments;
        this.wants = wants;
        this.pool = pool.stream().distinct().filter(route -> route.canBeDriven(problem)).toList();
        addRoutes();
        if (problem.windows().isEmpty()) {
            addTurns();
            addTurnGaps();
            addHolds();
            addBirds();
        }
        addShares();
        model.maximize(worth);
    }

    private void addRoutes() {
        List<List<Literal>> ofDay = new ArrayList<>();
        problem.days().forEach(day -> ofDay.add(new ArrayList<>()));
        for (Route route : pool) {
            BoolVar choice = model.newBoolVar("");
            chosen.add(choice);
            ofDay.get(route.day()).add(choice);
            double driving = problem.drivingPricePerHour() * route.drivingSeconds(problem) / 3600;
            worth.addTerm(choice, Math.round(-SCALE * driving));
        }
        ofDay.forEach(model::addExactlyOne);
    }

    /** A turn needs a stop around it. */
    private void addTurns() {
        List<Map<Integer, Set<Literal>>> stops = new ArrayList<>();
        problem.days().forEach(day -> stops.add(new TreeMap<>()));
        for (int r = 0; r < pool.size(); r++) {
            for (Stay stay : pool.get(r).stays()) {
                for (int c : chancesWithin(stay)) {
                    stops.get(stay.day()).computeIfAbsent(c, chance -> new LinkedHashSet<>()).add(chosen.get(r));
                }
            }
        }
        for (int day = 0; day < stops.size(); day++) {
            double[] committed = table.committed(day);
            Map<Integer, BoolVar> turnsOfDay = new LinkedHashMap<>();
            stops.get(day).forEach((chance, routes) -> {
                BoolVar turn = model.newBoolVar("");
                if (committed != null && committed[chance] > 0) {
                    worth.addTerm(turn, Math.round(SCALE * committed[chance]));
                }
                turnsOfDay.put(chance, turn);
                List<Literal> one = new ArrayList<>(routes);
                one.add(turn.not());
                model.addBoolOr(one);
            });
            turns.add(turnsOfDay);
        }
    }

    private List<Integer> chancesWithin(Stay stay) {
        List<Integer> within = new ArrayList<>();
        for (int rank = table.firstRank(stay.site()); rank < table.firstRank(stay.site() + 1); rank++) {
            int c = table.atRank(rank);
            Chance chance = table.chance(c);
            if (chance.start() >= problem.times().ready(stay.arrival())
                    && chance.end() <= problem.times().packing(stay.departure()) && !moments.isBlocked(c)
                    && problem.banned().allows(stay.day(), chance)
                    && stay.fixedTurns().stream().allMatch(turn -> problem.times().areApart(chance, turn))) {
                within.add(c);
            }
        }
        return within;
    }

    /** One team works one bird at a time. */
    private void addTurnGaps() {
        for (Map<Integer, BoolVar> ofDay : turns) {
            List<Integer> chances = ofDay.keySet().stream().sorted().toList();
            for (int first = 0; first < chances.size(); first++) {
                List<Literal> atOnce = new ArrayList<>();
                int start = table.chance(chances.get(first)).start();
                for (int other : chances) {
                    Chance chance = table.chance(other);
                    if (chance.start() <= start && start < chance.end() + problem.times().turnGap()) {
                        atOnce.add(ofDay.get(other));
                    }
                }
                if (atOnce.size() > 1) {
                    model.addAtMostOne(atOnce);
                }
            }
        }
    }

    /** No square twice at a time: asked at every arrival. */
    private void addHolds() {
        Set<Set<Literal>> known = new LinkedHashSet<>();
        for (Route route : pool) {
            for (Stay arriving : route.stays()) {
                for (int square : problem.squaresOfSite().get(arriving.site())) {
                    Set<Literal> holders = new LinkedHashSet<>();
                    for (int r = 0; r < pool.size(); r++) {
                        if (pool.get(r).stays().stream().anyMatch(stay -> stay.fixed().isEmpty()
                                && stay.overlaps(arriving.arrival(), arriving.arrival() + 1)
                                && problem.squaresOfSite().get(stay.site()).contains(square))) {
                            holders.add(chosen.get(r));
                        }
                    }
                    if (holders.size() > 1 && known.add(holders)) {
                        model.addAtMostOne(holders);
                    }
                }
            }
        }
    }

    private void addBirds() {
        for (BirdMoments.Moment moment : moments.all()) {
            List<BoolVar> atOnce = new ArrayList<>();
            for (int c : moment.chances()) {
                for (Map<Integer, BoolVar> ofDay : turns) {
                    if (ofDay.containsKey(c)) {
                        atOnce.add(ofDay.get(c));
                    }
                }
            }
            if (atOnce.size() > moment.room()) {
                model.addLessOrEqual(LinearExpr.sum(atOnce.toArray(BoolVar[]::new)), moment.room());
            }
        }
    }

    /** The share served of each square and group lies below some lines that touch the curve from above. */
    private void addShares() {
        List<List<WorkedTurn>> ofSquare = new ArrayList<>();
        for (int square = 0; square < problem.squareCount(); square++) {
            ofSquare.add(new ArrayList<>());
        }
        for (Map<Integer, BoolVar> ofDay : turns) {
            ofDay.forEach((chance, turn) -> problem.squaresOfSite().get(table.chance(chance).site())
                    .forEach(square -> ofSquare.get(square).add(new WorkedTurn(table.chance(chance), turn))));
        }
        for (int r = 0; r < pool.size() && !problem.windows().isEmpty(); r++) {
            for (Stay stay : pool.get(r).stays()) {
                for (int square : problem.squaresOfSite().get(stay.site())) {
                    ofSquare.get(square).add(new WorkedTurn(stay.turns().get(0), chosen.get(r)));
                }
            }
        }
        for (int square = 0; square < ofSquare.size(); square++) {
            for (int g = 0; g < problem.groupCount(); g++) {
                if (wants.of(square, g) > 0) {
                    addShare(wants.of(square, g), g, ofSquare.get(square));
                }
            }
        }
    }

    /** A chance that some day may work, or, where work has windows of time, one that a route of the pool works. */
    private record WorkedTurn(Chance chance, BoolVar turn) {
    }

    private void addShare(double needed, int group, List<WorkedTurn> turnsOfSquare) {
        LinearExprBuilder served = LinearExpr.newBuilder();
        long most = 0;
        for (WorkedTurn worked : turnsOfSquare) {
            double amount = worked.chance.service().amount(group);
            long whole = Math.round(AMOUNT_SCALE * Math.min(CERTAIN, amount));
            if (whole > 0) {
                served.addTerm(worked.turn, whole);
                most += whole;
            }
        }
        if (most == 0) {
            return;
        }
        IntVar amount = model.newIntVar(0, most, "");
        model.addEquality(amount, served);
        IntVar share = model.newIntVar(0, SHARE_SCALE, "");
        worth.addTerm(share, Math.round(SCALE * needed / SHARE_SCALE));
        Share ofGroup = new Share(amount, share, needed);
        shares.add(ofGroup);
        for (double touch : TOUCHES) {
            if (touch == 0 || touch * AMOUNT_SCALE < most) {
                touch(ofGroup, touch);
            }
        }
    }

    /** @param needed chasers @param amount in thousandths @param share in ten-thousandths */
    private record Share(IntVar amount, IntVar share, double needed) {
    }

    /** The share lies below the line that touches the curve there. */
    private void touch(Share share, double at) {
        long slope = Math.round(SHARE_SCALE * Math.exp(-at));
        long constant = Math.round(SHARE_SCALE * AMOUNT_SCALE * (1 - (1 + at) * Math.exp(-at)));
        model.addLessOrEqual(LinearExpr.newBuilder().addTerm(share.share, AMOUNT_SCALE).addTerm(share.amount, -slope), constant);
    }

    /** Lines where the last solution thinks too well of itself; how much it does so in all. */
    private double touchWhereItLies() {
        double above = 0;
        for (Share share : shares) {
            double at = solver.value(share.amount) / (double) AMOUNT_SCALE;
            double tooMuch = solver.value(share.share) / (double) SHARE_SCALE + Math.expm1(-at);
            if (tooMuch > 1.5 / SHARE_SCALE) {
                above += share.needed * tooMuch;
                touch(share, at);
            }
        }
        return above;
    }

    /** Where to start from: a plan whose routes are in the pool. */
    void startFrom(List<Route> plan) {
        for (int r = 0; r < pool.size(); r++) {
            model.addHint(chosen.get(r), plan.contains(pool.get(r)));
        }
        for (Route route : turns.isEmpty() ? List.<Route>of() : plan) {
            Set<Integer> worked = new LinkedHashSet<>();
            route.stays().forEach(stay -> stay.turns().forEach(turn -> worked.add(table.indexOf(turn))));
            turns.get(route.day()).forEach((chance, turn) -> model.addHint(turn, worked.contains(chance)));
        }
    }

    /**
     * What a mix brought.
     *
     * @param plan    by day; empty when the solver found none in time, or was stopped
     * @param settled whether nothing better can be made of the pool
     */
    record Mixed(Optional<List<Route>> plan, boolean settled) {

        static final Mixed NONE = new Mixed(Optional.empty(), false);
    }

    /**
     * Looks for the best choice; the stays are as short as their turns allow and those without any are left out.
     *
     * @param effort about seconds
     */
    Mixed best(double effort, long seed) {
        double left = effort;
        Mixed best = Mixed.NONE;
        double bestWorth = Double.NEGATIVE_INFINITY;
        while (left > 0 && !stopped) {
            solver.getParameters().setNumWorkers(1).setRandomSeed((int) (seed & 0x3fffffff)).setMaxDeterministicTime(left);
            CpSolverStatus status = solver.solve(model);
            if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
                return best;
            }
            left -= Math.max(effort / MOST_ROUNDS, solver.response().getDeterministicTime());
            List<Route> plan = chosen();
            double claimed = solver.objectiveValue() / SCALE;
            double above = touchWhereItLies();
            if (claimed - above > bestWorth) {
                bestWorth = claimed - above;
                best = new Mixed(Optional.of(plan), false);
            }
            if (above <= CLOSE * Math.abs(claimed)) {
                return new Mixed(best.plan, status == CpSolverStatus.OPTIMAL);
            }
        }
        return best;
    }

    private List<Route> chosen() {
        List<Route> plan = new ArrayList<>(Collections.nCopies(problem.days().size(), null));
        for (int r = 0; r < pool.size(); r++) {
            if (solver.booleanValue(chosen.get(r))) {
                plan.set(pool.get(r).day(), turns.isEmpty() ? pool.get(r) : worked(pool.get(r)));
            }
        }
        return plan;
    }

    /** Makes a running {@link #best} return soon; may be called from another thread. */
    void stop() {
        stopped = true;
        solver.stopSearch();
    }

    private Route worked(Route route) {
        Map<Integer, BoolVar> ofDay = turns.get(route.day());
        Set<Integer> free = new LinkedHashSet<>(ofDay.keySet());
        free.removeIf(c -> !solver.booleanValue(ofDay.get(c)));
        List<Stay> stays = new ArrayList<>();
        for (Stay stay : route.stays()) {
            List<Chance> worked = chancesWithin(stay).stream().filter(free::contains).map(table::chance)
                    .sorted(Comparator.comparingInt(Chance::start)).toList();
            if (stay.fixed().isPresent()) {
                stays.add(Stay.of(stay.fixed().get(), worked));
            } else if (!worked.isEmpty()) {
                stays.add(Stay.around(route.day(), worked, problem.times()));
            }
        }
        return new Route(route.day(), stays);
    }
}
