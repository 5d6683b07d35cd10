package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A club's own templates of kits on the command line: kept, listed, printed, made into a kit. */
class TemplatesTest {

    @TempDir
    Path folder;

    private Path event;

    @BeforeEach
    void demo() throws Exception {
        System.setProperty("straddle.state", folder.resolve("state").toString());
        event = EventCopy.ofDemo(folder.resolve("rove"));
    }

    @AfterEach
    void usual() {
        System.clearProperty("straddle.state");
    }

    @Test
    void aKitIsKeptAsATemplateAndAnotherTeamTakesOneOfItAlong() throws Exception {
        Console saved = Console.run("pack", event, "--save-template", "east");
        assertEquals(0, saved.code(), saved.err());
        assertTrue(Files.exists(folder.resolve("state/templates/East kit.csv")), saved.out());
        Console made = Console.run("pack", event, "--template", "east kit", "--make", "Second east kit", "--team", 1);
        assertEquals(0, made.code(), made.err());
        assertTrue(Console.run("pack", event, "--team", 1).out().contains("Second east kit"));
        assertTrue(Console.run("pack", event, "--template", "east kit").out().startsWith("id,kit,item,"));
        few(Console.run("pack", event, "--save-template", "East kit"), "A template is called “East kit” already.");
    }

    @Test
    void whatCannotBeMadeIsSaid() {
        few(Console.run("pack", event, "--template", "nothing"), "The templates are station, handheld, roadside and proof.");
        few(Console.run("pack", event, "--template", "proof", "--make", "East KIT", "--team", 1), "“East KIT” will not do.");
        few(Console.run("pack", event, "--make", "New kit", "--team", 1), "--make needs --template and --team");
        few(Console.run("pack", event, "--template", "proof", "--make", "New kit"), "--make needs --template and --team");
        few(Console.run("pack", event, "--save-template", "no such kit"), "No kit is called “no such kit”.");
    }

    private static void few(Console refused, String says) {
        assertEquals(2, refused.code());
        assertTrue(refused.err().contains(says), refused.err());
    }
}
