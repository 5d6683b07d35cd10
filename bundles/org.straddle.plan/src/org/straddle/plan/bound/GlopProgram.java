package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.List;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;

/** A linear programme solved by GLOP, which starts from the last optimum. Needs {@link NativeSolvers}. */
final class GlopProgram implements LinearProgram {

    /**
     * Without preprocessing the last basis is of use: where work is passes, that takes half the time of what GLOP does by
     * itself. Where it has windows of time the bound falls more slowly.
     */
    private static final String KEEPING_BASIS = "use_preprocessing:false,use_dual_simplex:true";

    /**
     * Steps of the simplex for each row and column, after which a warm start counts as going in circles. On the bench it
     * took up to 0.6; without a limit it was seen to turn for good among optima that are all alike.
     */
    private static final double MOST_STEPS_EACH = 1;

    /** A little noise on the worths leaves one optimum of many that are alike, and is taken away at the end. */
    private static final String FROM_NOTHING = "use_preprocessing:true,use_dual_simplex:true,perturb_costs_in_dual_simplex:true,"
            + "max_number_of_iterations:-1";

    /** What GLOP does when nothing is said. */
    private static final String OWN_WAYS = "";

    private final MPSolver solver = MPSolver.createSolver("GLOP");
    private final List<MPConstraint> rows = new ArrayList<>();
    private final List<MPVariable> columns = new ArrayList<>();
    private final boolean keepsBasis;
    private final double mostStepsEach;

    GlopProgram() {
        this(true);
    }

    GlopProgram(boolean keepsBasis) {
        this(keepsBasis, MOST_STEPS_EACH);
    }

    /** @param mostStepsEach steps for each row and column after which a warm start is given up */
    GlopProgram(boolean keepsBasis, double mostStepsEach) {
        this.keepsBasis = keepsBasis;
        this.mostStepsEach = mostStepsEach;
        solver.objective().setMaximization();
    }

    @Override
    public int addRow(double lower, double upper) {
        rows.add(solver.makeConstraint(lower, upper));
        return rows.size() - 1;
    }

    @Override
    public int addColumn(double worth, double most) {
        MPVariable column = solver.makeNumVar(0, most, "");
        solver.objective().setCoefficient(column, worth);
        columns.add(column);
        return columns.size() - 1;
    }

    @Override
    public void set(int row, int column, double factor) {
        rows.get(row).setCoefficient(columns.get(column), factor);
    }

    @Override
    public void limit(int column, double most) {
        columns.get(column).setUb(most);
    }

    @Override
    public Optimum solve() {
        int most = (int) Math.ceil(mostStepsEach * (rows.size() + columns.size()));
        MPSolver.ResultStatus status = solve(keepsBasis ? KEEPING_BASIS + ",max_number_of_iterations:" + most : OWN_WAYS);
        if (status != MPSolver.ResultStatus.OPTIMAL) {
            solver.reset(); // circles or numerical trouble along the warm start: a cold one settles it
            status = solve(FROM_NOTHING);
        }
        if (status != MPSolver.ResultStatus.OPTIMAL) {
            throw new IllegalStateException("GLOP ended " + status);
        }
        return new Optimum(solver.objective().value(), rows.stream().mapToDouble(MPConstraint::dualValue).toArray(),
                columns.stream().mapToDouble(MPVariable::solutionValue).toArray(),
                columns.stream().mapToDouble(column -> Math.max(0, -column.reducedCost())).toArray());
    }

    private MPSolver.ResultStatus solve(String parameters) {
        solver.setSolverSpecificParametersAsString(parameters);
        return solver.solve();
    }

    @Override
    public void close() {
        solver.delete();
    }
}
