package org.straddle.packaging;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.nio.file.Path;

/**
 * Runs a list of commands without the framework, in one start on the class path of the command line:
 * {@code OneClassPath SAID <COMMANDS}.
 */
final class OneClassPath {

    private OneClassPath() {
    }

    public static void main(String[] arguments) throws Exception {
        // Known by name only: what packs the program is compiled without it.
        var run = MethodHandles.publicLookup().findStatic(Class.forName("org.straddle.cli.Main"), "run",
                MethodType.methodType(int.class, String[].class)).asFixedArity();
        CommandList.read(System.in).run(words -> (int) run.invokeExact(words), Path.of(arguments[0]));
        System.exit(0);
    }
}
