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

    private final MPSolver solver = MPSolver.createSolver("GLOP");
    private final List<MPConstraint> rows = new ArrayList<>();
    private final List<MPVariable> columns = new ArrayList<>();

    GlopProgram() {
        this(true);
    }

    GlopProgram(boolean keepsBasis) {
        solver.objective().setMaximization();
        if (keepsBasis) {
            solver.setSolverSpecificParametersAsString(KEEPING_BASIS);
        }
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
    public Optimum solve() {
        MPSolver.ResultStatus status = solver.solve();
        if (status == MPSolver.ResultStatus.ABNORMAL) {
            solver.reset(); // numerical trouble along the warm start: a cold one settles it
            status = solver.solve();
        }
        if (status != MPSolver.ResultStatus.OPTIMAL) {
            throw new IllegalStateException("GLOP ended " + status);
        }
        return new Optimum(solver.objective().value(), rows.stream().mapToDouble(MPConstraint::dualValue).toArray(),
                columns.stream().mapToDouble(MPVariable::solutionValue).toArray(),
                columns.stream().mapToDouble(column -> Math.max(0, -column.reducedCost())).toArray());
    }

    @Override
    public void close() {
        solver.delete();
    }
}
