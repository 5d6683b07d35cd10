package org.straddle.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

import org.straddle.exchange.ReadException;
import org.straddle.model.InertText;

/** Where campaigns work: a demo event to copy, and commands that run in this process and are judged. */
final class Bench {

    private static final int LONGEST_S = 120;
    private static final int MOST_LINES = 2;

    private final Path work;
    private final Path good;
    private String lastRefusal;
    private final ByteArrayOutputStream pastTheGate;

    Bench(Path work, ByteArrayOutputStream pastTheGate) throws IOException {
        this.work = work;
        this.pastTheGate = pastTheGate;
        this.good = work.resolve("good");
        if (StraddleCommand.run(new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter()), "demo", good.toString()) != 0) {
            throw new IllegalStateException("the demo event could not be made");
        }
    }

    Path work() {
        return work;
    }

    Path good() {
        return good;
    }

    /** A fresh copy of the demo event. */
    Path event() {
        return copy(good, work.resolve("event"));
    }

    static Path copy(Path from, Path to) {
        remove(to);
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.toList()) {
                Path copy = to.resolve(from.relativize(each).toString());
                if (Files.isDirectory(each)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(each, copy);
                }
            }
            return to;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void remove(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Path> files(Path folder, String ending) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).filter(file -> file.toString().endsWith(ending)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One of several, by chance. */
    static <T> T one(List<T> of, Random random) {
        return of.get(random.nextInt(of.size()));
    }

    /**
     * Runs a command and judges it: it ends, with 0, 1 or 2; a refusal is one or two lines; nothing is called a bug, nothing
     * is printed past the gate, and nothing that is printed acts.
     */
    Console run(Campaign.Tally tally, Object... arguments) {
        String[] words = Arrays.stream(arguments).map(Object::toString).toArray(String[]::new);
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        pastTheGate.reset();
        tally.commands++;
        int code = inTime(String.join(" ", words), () -> StraddleCommand.run(new PrintWriter(out), new PrintWriter(err), words));
        Console run = new Console(code, out.toString(), err.toString());
        judge(String.join(" ", words), run);
        if (code == 2) {
            tally.refused++;
        } else {
            tally.done++;
        }
        return run;
    }

    /** Asks a reader of the window for a file: it reads it, or says in two lines, file and remedy, why not. */
    void read(Campaign.Tally tally, Path file, Callable<?> reader) {
        pastTheGate.reset();
        tally.commands++;
        boolean read = inTime("reading " + file, () -> {
            try {
                reader.call();
                return true;
            } catch (ReadException e) {
                judge("reading " + file, new Console(2, "", InertText.line(e.getMessage().replace("\n", "|")).replace('|', '\n')));
                return false;
            }
        });
        if (read) {
            tally.done++;
        } else {
            tally.refused++;
        }
    }

    private static <T> T inTime(String what, Callable<T> work) {
        ExecutorService one = Executors.newSingleThreadExecutor(run -> {
            Thread thread = new Thread(null, run, "command", 0);
            thread.setDaemon(true);
            return thread;
        });
        try {
            return one.submit(work).get(LONGEST_S, TimeUnit.SECONDS);
        } catch (TimeoutException e) {
            throw new AssertionError(what + " does not end within " + LONGEST_S + " s");
        } catch (ExecutionException e) {
            throw e.getCause() instanceof AssertionError ? (AssertionError) e.getCause() : new AssertionError(what + " broke off: " + e.getCause(), e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        } finally {
            one.shutdownNow();
        }
    }

    /** Why the last command or reader that refused did so. */
    String lastRefusal() {
        return lastRefusal;
    }

    private void judge(String command, Console run) {
        lastRefusal = run.code() == 2 ? run.err() : lastRefusal;
        String said = run.err().lines().filter(line -> !line.startsWith("… ")).reduce("", (a, b) -> a + b + "\n");
        require(run.code() >= 0 && run.code() <= 2, command, "ends with " + run.code());
        require(!said.contains("Something failed"), command, "calls it a bug: " + said);
        require(!(said + run.out()).contains("\tat "), command, "prints a trace: " + said);
        require(run.code() != 2 || said.lines().count() <= MOST_LINES && !said.isBlank(), command, "complains in " + said.lines().count()
                + " lines: " + said.lines().limit(5).toList());
        require(!said.contains("org.straddle.") && !said.contains("java.") && !said.contains("For input string"), command,
                "speaks of its insides: " + said);
        require(InertText.isPlain((run.out() + run.err()).replace("\r\n", "").replaceAll("[\n\t]", "")), command, "prints what acts");
        require(pastTheGate.size() == 0, command, "something was printed past the gate: " + pastTheGate.toString().lines().filter(line -> !line.startsWith("\tat java")).limit(9).toList());
    }

    static void require(boolean holds, String what, String wrong) {
        if (!holds) {
            throw new AssertionError(what + ": " + wrong);
        }
    }
}
