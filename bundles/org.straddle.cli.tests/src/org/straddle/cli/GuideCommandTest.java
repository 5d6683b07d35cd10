package org.straddle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;

import org.junit.jupiter.api.Test;
import org.straddle.guide.Guide;

class GuideCommandTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void aloneItListsEveryRule() {
        assertEquals(0, run("guide"));
        Guide.index().forEach(page -> assertTrue(out.toString().contains(page.rule() + ": "), page.rule()));
    }

    @Test
    void aPageIsWrappedTo80Columns() {
        assertEquals(0, run("guide", "drive-too-long"));
        Guide.HEADINGS.forEach(heading -> assertTrue(out.toString().contains(heading), heading));
        assertTrue(out.toString().lines().allMatch(line -> line.length() <= 80), out::toString);
    }

    @Test
    void aPageNamesTheRulesNextToIt() {
        assertEquals(0, run("guide", "drive-too-long"));
        String after = out.toString().substring(out.toString().indexOf(Guide.SEE_ALSO));
        assertTrue(after.contains("driving-limit: A team does not drive too long in a day"), after);
    }

    @Test
    void anUnknownRuleNamesTheNearest() {
        assertEquals(2, run("guide", "drive-to-long"));
        assertTrue(err.toString().contains("drive-too-long"), err::toString);
    }

    private int run(String... arguments) {
        return StraddleCommand.run(new PrintWriter(out), new PrintWriter(err), arguments);
    }
}
