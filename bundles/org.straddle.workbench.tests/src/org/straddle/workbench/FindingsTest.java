package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.check.Finding;
import org.straddle.model.Acceptance;

/** What is done with findings from their view, by its commands. */
class FindingsTest {

    private static final String VIEW = "org.straddle.ui.findings";

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    @AfterEach
    void takeAllBack() {
        WINDOW.undoAll();
        WINDOW.ui(() -> WINDOW.session().computeNow());
        WINDOW.computed();
    }

    private static List<Finding> fixable() {
        return WINDOW.ask(() -> WINDOW.findings().stream().filter(finding -> finding.fix().isPresent()).toList());
    }

    private static void awaitFound(Finding finding, boolean found) {
        WINDOW.until(finding.key() + (found ? " is found" : " is gone"),
                () -> !WINDOW.session().computing() && WINDOW.keys().contains(finding.key()) == found);
    }

    @Test
    void theFixCommandFixesAndUndoBringsTheFindingBack() {
        Finding finding = fixable().get(0);
        WINDOW.choose(VIEW, List.of(finding));
        WINDOW.command("org.straddle.ui.fix");
        awaitFound(finding, false);
        assertEquals(finding.fix().orElseThrow().label(), WINDOW.ask(() -> WINDOW.session().undoLabel()));
        WINDOW.ui(() -> WINDOW.session().undo());
        awaitFound(finding, true);
        assertFalse(WINDOW.ask(() -> WINDOW.session().dirty()));
    }

    @Test
    void severalFindingsAreFixedAsOneStep() {
        List<Finding> some = fixable().stream().filter(finding -> finding.rule().equals("one-channel")).toList();
        assertTrue(some.size() > 2, "the draft has several collisions");
        WINDOW.choose(VIEW, some);
        WINDOW.command("org.straddle.ui.fix");
        some.forEach(finding -> awaitFound(finding, false));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()), "one step");
        some.forEach(finding -> awaitFound(finding, true));
    }

    @Test
    void anAcceptedFindingCountsNoMoreUntilTheAcceptanceIsWithdrawn() {
        Finding finding = WINDOW.ask(() -> WINDOW.findings().get(0));
        long before = WINDOW.ask(FindingsTest::open);
        WINDOW.choose(VIEW, List.of(finding));
        WINDOW.command("org.straddle.ui.accept");
        WINDOW.answer("Accept this finding", "Both teams agreed on it", "Q0AAR");
        WINDOW.until("it counts no more", () -> open() == before - 1);
        Acceptance acceptance = WINDOW.ask(() -> WINDOW.session().event().getAcceptances().get(0));
        assertEquals("Both teams agreed on it", acceptance.getReason());
        assertEquals("Q0AAR", acceptance.getBy());

        WINDOW.deed(VIEW, "Show accepted findings too");
        WINDOW.choose(VIEW, WINDOW.ask(() -> WINDOW.findings().stream()
                .filter(found -> found.key().equals(finding.key())).toList()));
        WINDOW.ui(() -> RunningWorkbench.below(DemoWindow.content(VIEW), Link.class).stream()
                .filter(link -> link.getText().contains("Withdraw")).findFirst().orElseThrow()
                .notifyListeners(SWT.Selection, new Event()));
        WINDOW.until("it counts again", () -> open() == before);
        assertTrue(WINDOW.ask(() -> WINDOW.session().event().getAcceptances().isEmpty()));
        WINDOW.ui(() -> WINDOW.session().undo());
        WINDOW.until("it is accepted again", () -> open() == before - 1);
        WINDOW.deed(VIEW, "Show accepted findings too");
    }

    private static long open() {
        return WINDOW.session().computed().map(computed -> computed.findings().stream()
                .filter(finding -> finding.accepted().isEmpty()).count()).orElse(-1L);
    }
}
