package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.widgets.Form;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.model.Site;
import org.straddle.model.Visit;
import org.straddle.visit.SiteVisits;
import org.straddle.ui.horizon.HorizonCanvas;

/** Visits are history, and horizons are drawn. */
class SiteVisitsTest {

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    private static Site corner() {
        return WINDOW.ask(() -> WINDOW.session().event().getSites().stream()
                .filter(site -> site.getName().equals("Four Winds Corner")).findFirst().orElseThrow());
    }

    private static Composite form() {
        return RunningWorkbench.below(DemoWindow.page().getActiveEditor().getSite().getShell(), Form.class).stream()
                .filter(Form::isVisible).findFirst().orElseThrow();
    }

    private static Button button(String name) {
        return RunningWorkbench.below(form(), Button.class).stream().filter(button -> button.getText().equals(name)).findFirst()
                .orElseThrow();
    }

    /** The fields; those in tables are made only while a cell is edited, or kept hidden. */
    private static Stream<Text> texts() {
        return RunningWorkbench.below(form(), Text.class).stream().filter(text -> !(text.getParent() instanceof Table));
    }

    private static void press(String name) {
        WINDOW.ui(() -> button(name).notifyListeners(SWT.Selection, new Event()));
    }

    @Test
    void aNewVisitLeavesTheOldOneAsItWas() {
        Site site = corner();
        Visit old = WINDOW.ask(() -> site.getVisits().get(0));
        WINDOW.ui(() -> WINDOW.session().reveal(site));
        press("New visit");
        Visit added = WINDOW.ask(() -> site.getVisits().get(1));
        // The demo's visits lie in the future: both are open until the new one is the newest.
        WINDOW.ui(() -> added.setDate(old.getDate().plusDays(1)));
        assertEquals(WINDOW.ask(old::getParking), WINDOW.ask(added::getParking));
        assertTrue(WINDOW.ask(() -> SiteVisits.isHistory(site, old)));

        WINDOW.ui(() -> WINDOW.session().reveal(old));
        assertEquals(List.of(), WINDOW.ask(() -> texts().filter(Text::getEditable).toList()));
        assertFalse(WINDOW.ask(() -> button("Add photos…").getEnabled()));
        press("Correct this visit");
        assertTrue(WINDOW.ask(() -> texts().allMatch(Text::getEditable)));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(List.of(old), WINDOW.ask(() -> List.copyOf(site.getVisits())));
    }

    @Test
    void aClickIntoTheSkyIsAPointAndOneUndo() {
        Site site = corner();
        int before = WINDOW.ask(() -> site.getHorizon().size());
        WINDOW.ui(() -> WINDOW.session().reveal(site));
        HorizonCanvas canvas = WINDOW.ask(() -> RunningWorkbench.below(form(), HorizonCanvas.class).get(0));
        WINDOW.ui(() -> {
            Event click = new Event();
            click.button = 1;
            click.x = canvas.getClientArea().width * 9 / 10;
            click.y = canvas.getClientArea().height / 4;
            canvas.notifyListeners(SWT.MouseDown, click);
            canvas.notifyListeners(SWT.MouseUp, click);
        });
        assertEquals(before + 1, WINDOW.ask(() -> site.getHorizon().size()));
        assertEquals("Drawn by hand.", WINDOW.ask(site::getHorizonOrigin));
        WINDOW.ui(() -> {
            Event delete = new Event();
            delete.keyCode = SWT.DEL;
            canvas.notifyListeners(SWT.KeyDown, delete);
        });
        assertEquals(before, WINDOW.ask(() -> site.getHorizon().size()));
        WINDOW.ui(() -> WINDOW.session().undo());
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(before, WINDOW.ask(() -> site.getHorizon().size()));
    }
}
