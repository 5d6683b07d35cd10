package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.kit.PackingRow;
import org.straddle.model.KitItem;
import org.straddle.model.Review;
import org.straddle.model.Site;
import org.straddle.model.naming.Naming;

/** What a team does with its packing list and a reviewer with a site, from their views. */
class TeamWorkTest {

    private static final String PACKING = "org.straddle.ui.kit.packing";
    private static final String NOTES = "org.straddle.ui.safety.notes";

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    @Test
    void anItemIsTickedOffByItsBoxOrByTheDeedAndUndoClearsTheTick() {
        WINDOW.deed(PACKING, "Change the packer's name");
        WINDOW.answer("Who packs?", "Q0AAR");
        KitItem item = WINDOW.ask(() -> ((PackingRow) list().getItem(0).getData()).item());
        assertNull(WINDOW.ask(item::getTick));

        // What SWT tells when the Space key presses the box of the chosen row.
        WINDOW.ui(() -> {
            TableItem row = list().getItem(0);
            row.setChecked(true);
            Event press = new Event();
            press.item = row;
            press.detail = SWT.CHECK;
            list().notifyListeners(SWT.Selection, press);
        });
        WINDOW.until("the item is ticked off", () -> item.getTick() != null);
        assertEquals("Q0AAR", WINDOW.ask(() -> item.getTick().getBy()));
        assertNotNull(WINDOW.ask(() -> item.getTick().getAt()));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertNull(WINDOW.ask(item::getTick));
        assertFalse(WINDOW.ask(() -> list().getItem(0).getChecked()), "the box follows");

        WINDOW.deed(PACKING, "Tick or clear");
        WINDOW.until("the item is ticked off", () -> item.getTick() != null);
        WINDOW.ui(() -> WINDOW.session().undo());
        assertNull(WINDOW.ask(item::getTick));
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()));
    }

    private static Table list() {
        return RunningWorkbench.below(DemoWindow.content(PACKING), Table.class).get(0);
    }

    @Test
    void aReviewIsSignedAsOneStep() {
        Site site = WINDOW.ask(() -> WINDOW.session().event().getSites().get(1));
        WINDOW.choose("org.straddle.ui.explorer", List.of(site));
        int before = WINDOW.ask(() -> site.getReviews().size());
        WINDOW.deed(NOTES, "Sign off");
        WINDOW.answer("Sign off a review", "Q2MRL");
        WINDOW.until("the review is there", () -> site.getReviews().size() == before + 1);
        Review review = WINDOW.ask(() -> site.getReviews().get(before));
        assertEquals("Q2MRL", review.getReviewer());
        assertEquals(1, WINDOW.ask(() -> review.getTeam().getNumber()));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(before, WINDOW.ask(() -> site.getReviews().size()));
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()), "one step");
    }

    @Test
    void aViewThatIsOpenedShowsWhatWasChosenBefore() {
        Site site = WINDOW.ask(() -> WINDOW.session().event().getSites().get(2));
        WINDOW.ui(() -> DemoWindow.page().hideView(DemoWindow.shown(NOTES)));
        WINDOW.choose("org.straddle.ui.explorer", List.of(site));
        WINDOW.ui(() -> DemoWindow.shown(NOTES));
        assertEquals(Naming.name(site),
                WINDOW.ask(() -> RunningWorkbench.below(DemoWindow.content(NOTES), Combo.class).get(0).getText()));
    }
}
