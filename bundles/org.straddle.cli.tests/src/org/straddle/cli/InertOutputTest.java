package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.model.Identified;
import org.straddle.model.InertText;
import org.straddle.store.EventFolder;

/** Whatever texts an event, a file, a file's name or an argument holds: nothing that is printed or published acts. */
class InertOutputTest {

    /** Of each kind that XML 1.0 can carry: C1, overrides and isolates of direction, separators of lines and paragraphs. */
    private static final String HOSTILE = "\nFORGED\r\n\t FORGED\u007F\u0085\u009B31m\u009D0;title\u009C\u202Eabc\u2066\u2069\u2028\u2029<b>&\"'";

    /** The words of the announcement alone are set in paragraphs, as somebody wrote them. */
    private static final String PARAGRAPH = HOSTILE.replace("\n", "").replace("\r", "");

    @TempDir
    static Path folder;

    private static Path event;

    @BeforeAll
    static void everyTextIsHostile() throws IOException {
        event = EventCopy.ofDemo(folder.resolve("demo"));
        try (EventFolder open = EventFolder.open(event)) {
            List<EObject> all = new ArrayList<>(List.of(open.event()));
            open.event().eAllContents().forEachRemaining(all::add);
            for (EObject each : all) {
                for (EAttribute text : each.eClass().getEAllAttributes()) {
                    boolean named = List.of("name", "label", "notes", "text", "role", "announcementText", "club", "callSign", "by", "access",
                            "title", "reason", "source", "origin").contains(text.getName());
                    if (named && !text.isMany() && text.isChangeable() && text.getEAttributeType().getInstanceClass() == String.class) {
                        each.eSet(text, (each.eGet(text) == null ? "" : each.eGet(text))
                                + (text.getName().equals("announcementText") ? PARAGRAPH : HOSTILE));
                    }
                }
            }
            open.save();
        }
        assertTrue(Files.readString(event.resolve("birds.xmi")).contains("abc"), "the names were saved");
    }

    private static void assertInert(String what, String text) {
        String left = text.replace("\r\n", "").replace("\n", "").replace("\t", "");
        assertTrue(InertText.isPlain(left), () -> what + ": "
                + InertText.line(left.codePoints().filter(InertText::acts).limit(5).collect(StringBuilder::new, StringBuilder::appendCodePoint,
                        StringBuilder::append).toString()));
    }

    /** A cell of CSV may hold ends of lines, which is quoted then; nothing else may. */
    private static void assertOurLines(String what, String text) {
        List<String> lines = text.lines().toList();
        for (int i = 1; i < lines.size(); i++) {
            if (lines.get(i).strip().startsWith("FORGED")) {
                fail(what + " has a line that is none of ours, after: " + lines.get(i - 1));
            }
        }
    }

    /** The list of commands is the command line's own: a new one without arguments here fails. */
    @Test
    void noCommandPrintsWhatActs() throws IOException {
        Path sites = Files.writeString(folder.resolve("sites\u009B.csv"),
                "name,latitude,longitude,what\u001B[31m\n\u001B[2J\u202EGate,64.5,-20.1,\u0007\n\u009D,95,1,x\n");
        Path bad = Files.writeString(folder.resolve("bad\u202E.csv"), "\u001B[31m,\u009B\n1,2\n");
        Map<String, List<Object[]>> arguments = new TreeMap<>();
        arguments.put("demo", List.of(new Object[][] { { event } }));
        arguments.put("import", List.of(new Object[] { event, sites, "--partial", "--dry-run" }, new Object[] { event, sites },
                new Object[] { event, bad }, new Object[] { event, bad, "--kits" }, new Object[] { event, sites, "--layer", "\u009Bmoor" }));
        arguments.put("passes", List.of(new Object[] { event, "--site", "tern" }, new Object[] { event, "--site", "\u001B\u202E" }));
        arguments.put("reach", List.of(new Object[] { event, "--bird", "Tern" }, new Object[] { event, "--square", "\u009B" }));
        arguments.put("plan", List.of(new Object[][] { { event, "--rounds", 1, "--dry-run" } }));
        arguments.put("check", List.of(new Object[][] { { event } }));
        arguments.put("split", List.of(new Object[][] { { event } }));
        arguments.put("pack", List.of(new Object[] { event }, new Object[] { event, "--single-points" }, new Object[] { event, "--shared" },
                new Object[] { event, "--practice" }, new Object[] { event, "--template", "\u009B" }, new Object[] { event, "--save-template", "\u009B" },
                new Object[] { event, "--template", "proof", "--make", "\u009B", "--team", "\u001B" },
                new Object[] { event, "--ticks", bad }));
        arguments.put("review", List.of(new Object[][] { { event } }));
        arguments.put("call", List.of(new Object[][] { { event }, { event, "--team", 1, "--by", "Ann\u202E", "--note", "all\u001Bwell" }, { event } }));
        arguments.put("publish", List.of(new Object[][] { { event, "--out", folder.resolve("sheets") } }));
        arguments.put("lines", List.of(new Object[][] { { event } }));
        arguments.put("export", List.of(new Object[] { event }, new Object[] { event, "--team", "1" }, new Object[] { event, "--layer", "\u001B" }));
        arguments.put("horizon", List.of(new Object[][] { { event, "--site", "\u009B", "--raster", folder.resolve("no\u202E.asc") } }));
        arguments.put("guide", List.of(new Object[][] { {}, { "\u001B[31m" } }));
        assertEquals(arguments.keySet(), new java.util.TreeSet<>(StraddleCommand.line(new StraddleCommand()).getSubcommands().keySet()));
        for (Map.Entry<String, List<Object[]>> command : arguments.entrySet()) {
            for (Object[] each : command.getValue()) {
                for (String format : List.of("", "csv", "json")) {
                    List<Object> words = new ArrayList<>(List.of(command.getKey()));
                    words.addAll(List.of(each));
                    if (!format.isEmpty()) {
                        words.addAll(List.of("--format", format));
                    }
                    Console run = Console.run(words.toArray());
                    assertInert(words + " printed", run.out());
                    assertInert(words + " complained", run.err());
                    assertOurLines(words + " complained", run.err());
                    // What is exported is no prose: its format says what belongs to a name.
                    if (!format.equals("csv") && !command.getKey().equals("export")) {
                        assertOurLines(words + " printed", run.out());
                    }
                    assertTrue(!(run.out() + run.err()).contains("Something failed"), run.err());
                }
            }
        }
        try (Stream<Path> sheets = Files.walk(folder.resolve("sheets"))) {
            List<Path> all = sheets.filter(Files::isRegularFile).filter(file -> !file.toString().endsWith(".pdf")).toList();
            assertTrue(all.size() > 3, all.toString());
            for (Path sheet : all) {
                assertInert(sheet.toString(), text(sheet));
                assertOurLines(sheet.toString(), text(sheet));
            }
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void whatIsShownTellsWhatItWas() {
        Console run = Console.run("passes", event, "--site", "\u001B[31m");
        assertTrue(run.err().contains("\\u001b[31m"), run.err());
    }

    @Test
    void theLastGateLetsNothingThrough() {
        StringWriter got = new StringWriter();
        PrintWriter out = new PrintWriter(new InertWriter(got));
        out.print("a\u001B\u009B\u202E\r\nb\tc\rd \uD834\uDD1E \uD834");
        out.print("e\uDD1E\uD834");
        out.print("\uDD1E.");
        out.flush();
        assertEquals("a\\u001b\\u009b\\u202e\r\nb\tc\\u000dd \uD834\uDD1E \\ud834e\\udd1e\uD834\uDD1E.", got.toString());
    }
}
