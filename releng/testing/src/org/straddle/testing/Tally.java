package org.straddle.testing;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.support.descriptor.ClassSource;
import org.junit.platform.engine.support.descriptor.MethodSource;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;

/** Counts tests, and keeps what is to be told of those that failed. */
final class Tally implements TestExecutionListener {

    private final List<String> told = new ArrayList<>();
    private int run;
    private int failures;
    private int errors;
    private int skipped;

    @Override
    public void executionSkipped(TestIdentifier test, String reason) {
        run++;
        skipped++;
    }

    @Override
    public void executionFinished(TestIdentifier test, TestExecutionResult result) {
        run += test.isTest() ? 1 : 0;
        switch (result.getStatus()) {
            case SUCCESSFUL -> { }
            case ABORTED -> skipped++;
            case FAILED -> failed(test, result.getThrowable().orElse(null));
        }
    }

    private void failed(TestIdentifier test, Throwable why) {
        if (why instanceof AssertionError) {
            failures++;
        } else {
            errors++;
        }
        StringWriter trace = new StringWriter();
        if (why != null) {
            why.printStackTrace(new PrintWriter(trace));
        }
        told.add("FAILED " + place(test) + " " + test.getDisplayName() + "\n" + trace.toString().stripTrailing());
    }

    private static String place(TestIdentifier test) {
        return test.getSource().map(source -> {
            if (source instanceof MethodSource method) {
                return method.getClassName() + "#" + method.getMethodName();
            }
            return source instanceof ClassSource type ? type.getClassName() : source.toString();
        }).orElse("");
    }

    void add(Tally other) {
        run += other.run;
        failures += other.failures;
        errors += other.errors;
        skipped += other.skipped;
    }

    List<String> told() {
        return told;
    }

    /** A run without a test is none. */
    boolean failed() {
        return run == 0 || failures + errors > 0;
    }

    /** As build tools say it. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "Tests run: %d, Failures: %d, Errors: %d, Skipped: %d", run, failures, errors, skipped);
    }
}
