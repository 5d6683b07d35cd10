package org.straddle.plan.bound;

import java.io.File;
import java.util.List;
import java.util.Optional;

import com.google.ortools.Loader;

/** The native libraries of the solvers, loaded when first asked for: it takes half a second and tens of megabytes. */
public final class NativeSolvers {

    /**
     * What the solvers' library needs on Windows, each after what it needs itself (the import tables of OR-Tools 9.15):
     * Windows does not look for them beside the library.
     */
    private static final List<String> NEEDED_ON_WINDOWS = List.of("zlib1", "bz2", "abseil_dll", "re2", "libutf8_validity",
            "libprotobuf", "highs", "libscip", "ortools");

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
                loadNeededOnWindows();
                Loader.loadNativeLibraries();
                return null;
            } catch (RuntimeException | LinkageError e) {
                return e; // not built for this system: the planner goes on without
            }
        }

        /** From the folder that the start script names; elsewhere there is nothing to load. */
        private static void loadNeededOnWindows() {
            for (String folder : System.getProperty("java.library.path", "").split(File.pathSeparator)) {
                if (new File(folder, "ortools.dll").isFile()) {
                    NEEDED_ON_WINDOWS.forEach(name -> System.load(new File(folder, name + ".dll").getAbsolutePath()));
                    return;
                }
            }
        }
    }
}
