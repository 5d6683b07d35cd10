package org.straddle.plan.bound;

/**
 * A linear programme that grows by rows and columns and is solved again and again, to a maximum. Keeps the solver
 * out of the planner: whoever has none plans without.
 */
interface LinearProgram extends AutoCloseable {

    /** Adds a row that holds between two limits; returns its number. */
    int addRow(double lower, double upper);

    /** Adds a column between zero and a limit; returns its number. */
    int addColumn(double worth, double most);

    void set(int row, int column, double factor);

    /** Sets another upper limit of a column. */
    void limit(int column, double most);

    /**
     * Solves what is there now.
     *
     * @throws IllegalStateException when the solver gives no optimum
     */
    Optimum solve();

    @Override
    void close();

    /**
     * @param prices by row: what one unit more of the upper limit would bring
     * @param values by column
     * @param losses by column: what the worth would fall by per unit of it, 0 for those in use
     */
    record Optimum(double worth, double[] prices, double[] values, double[] losses) {
    }
}
