package org.straddle.ui.workbench;

/** The view that searches for a plan, as the shell knows it. */
public interface PlanSearch {

    String VIEW = "org.straddle.ui.planning";

    /** Begins a search, or brings the one that runs to the front. */
    void search();
}
