package org.straddle.plan.bound;

import java.util.Optional;

import com.google.ortools.Loader;

/** The native libraries of the solvers, loaded when first asked for: it takes half a second and tens of megabytes. */
public final class NativeSolvers {

    private NativeSolvers() {
    }

    /** Whether they can be used on this machine. */
    public static boolean load() {
        return failure().isEmpty();
    }

    /** What keeps them from being used. */
    public static Optional<Throwable> failure() {
        return Optional.ofNullable(Once.FAILURE);
    }

    private static final class Once {
        static final Throwable FAILURE = failureToLoad();

        private static Throwable failureToLoad() {
            try {
                Loader.loadNativeLibraries();
                return null;
            } catch (RuntimeException | LinkageError e) {
                return e; // not built for this system: the planner goes on without
            }
        }
    }
}
