package org.straddle.packaging;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * Runs programs one after the other in one start, {@code Mains SAID <COMMANDS}: a command is a class that has a main method,
 * and its arguments. One that returns ends with 0.
 */
final class Mains {

    private Mains() {
    }

    public static void main(String[] arguments) throws Exception {
        CommandList.read(System.in).run(Mains::run, Path.of(arguments[0]));
        System.exit(0);
    }

    private static int run(String... words) throws Throwable {
        Method main = Class.forName(words[0]).getMethod("main", String[].class);
        // The class itself may be seen by its own package alone.
        main.setAccessible(true);
        try {
            main.invoke(null, (Object) Arrays.copyOfRange(words, 1, words.length));
        } catch (InvocationTargetException failure) {
            throw failure.getCause();
        }
        return 0;
    }
}
