package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;

import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Team;
import org.straddle.model.naming.PolicyText;

/** Kits in the window: items change their places, kits begin from templates, ticks of a phone come in. */
class KitsTest {

    private static final String PACKING = "org.straddle.ui.kit.packing";

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    @AfterEach
    void takeBack() {
        WINDOW.undoAll();
    }

    private static Team team() {
        return WINDOW.session().event().getTeams().get(0);
    }

    /** A table of the form that is in front, by the number of its columns; to be called on the UI thread. */
    private static Table table(boolean oneColumn) {
        Control form = (Control) DemoWindow.page().getActiveEditor().getSite().getService(MPart.class).getWidget();
        return RunningWorkbench.below(form, Table.class).stream().filter(table -> (table.getColumnCount() == 1) == oneColumn)
                .findFirst().orElseThrow();
    }

    private static void choose(Table table, int... rows) {
        table.setSelection(rows);
        table.notifyListeners(SWT.Selection, new Event());
    }

    /** Where a place stands among the places; to be called on the UI thread. */
    private static int line(String begins) {
        Table places = table(true);
        return IntStream.range(0, places.getItemCount()).filter(i -> places.getItem(i).getText().startsWith(begins)).findFirst()
                .orElseThrow(() -> new AssertionError("no line " + begins));
    }

    /** What Enter on a line does. */
    private static void enter(String line) {
        WINDOW.later(() -> {
            Table places = table(true);
            int row = line(line);
            choose(places, row);
            Event press = new Event();
            press.item = places.getItem(row);
            places.notifyListeners(SWT.DefaultSelection, press);
        });
    }

    @Test
    void theChosenItemsMoveByTheKeyboardIntoABagAndIntoAnotherKit() {
        Kit kit = WINDOW.ask(() -> team().getKits().get(0));
        Kit other = WINDOW.ask(() -> WINDOW.session().event().getKits().stream().filter(each -> each != kit).findFirst().orElseThrow());
        List<KitItem> items = WINDOW.ask(() -> List.copyOf(kit.getItems()));
        int before = WINDOW.ask(() -> other.getItems().size());
        WINDOW.ui(() -> WINDOW.session().reveal(kit));
        WINDOW.ui(() -> choose(table(false), 0, 1));
        enter("A new bag");
        WINDOW.answer("New bag", "test bag");
        WINDOW.until("they are in the bag", () -> "test bag".equals(items.get(0).getBag()) && "test bag".equals(items.get(1).getBag()));
        WINDOW.until("the bag is a line", () -> IntStream.range(0, table(true).getItemCount())
                .anyMatch(i -> table(true).getItem(i).getText().startsWith("Bag: test bag  (2 items")));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()), "one step");

        WINDOW.ui(() -> choose(table(false), 0, 1));
        enter("Kit: " + WINDOW.ask(other::getName));
        WINDOW.until("they are in the other kit", () -> other.getItems().size() == before + 2);
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(items, WINDOW.ask(() -> List.copyOf(kit.getItems())), "in their old places");
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()), "one step");
    }

    @Test
    void itemsAreDraggedWithTheMouseIntoABagAndIntoAnotherKit() throws Exception {
        try (Mouse mouse = Mouse.ofTheDisplay()) {
            Kit kit = WINDOW.ask(() -> team().getKits().get(0));
            Kit other = WINDOW.ask(() -> WINDOW.session().event().getKits().stream().filter(each -> each != kit).findFirst().orElseThrow());
            KitItem item = WINDOW.ask(() -> kit.getItems().get(0));
            String bag = WINDOW.ask(() -> kit.getItems().stream().map(KitItem::getBag).filter(each -> !item.getBag().equals(each)).findFirst()
                    .orElseThrow());
            WINDOW.ui(() -> WINDOW.session().reveal(kit));
            drag(mouse, "Bag: " + bag);
            WINDOW.until("it is in the bag", () -> bag.equals(item.getBag()));
            WINDOW.ui(() -> WINDOW.session().undo());
            assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()), "one step");

            drag(mouse, "Kit: " + WINDOW.ask(other::getName));
            WINDOW.until("it is in the other kit", () -> item.eContainer() == other);
            WINDOW.ui(() -> WINDOW.session().undo());
            assertEquals(item, WINDOW.ask(() -> kit.getItems().get(0)), "in its old place");
            assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()), "one step");
        }
    }

    /** The first item onto a line; both are in sight without scrolling the form. */
    private static void drag(Mouse mouse, String line) throws Exception {
        WINDOW.ui(() -> table(true).showItem(table(true).getItem(line(line))));
        WINDOW.until("most of the line is in sight", () -> {
            Rectangle bounds = table(true).getItem(line(line)).getBounds();
            return table(true).getClientArea().contains(bounds.x, bounds.y + bounds.height * 3 / 4);
        });
        mouse.drag(WINDOW.ask(() -> middle(table(false), 0)), WINDOW.ask(() -> middle(table(true), line(line))));
    }

    private static Point middle(Table table, int row) {
        Rectangle bounds = table.getItem(row).getBounds(0);
        return table.toDisplay(bounds.x + 30, bounds.y + bounds.height / 2);
    }

    @Test
    void aKitBeginsFromATemplateAsOneStep() {
        int before = WINDOW.ask(() -> WINDOW.session().event().getKits().size());
        int carried = WINDOW.ask(() -> team().getKits().size());
        WINDOW.choose("org.straddle.ui.explorer", List.of(WINDOW.ask(KitsTest::team)));
        WINDOW.deed(PACKING, "New kit from a template");
        WINDOW.answer("New kit from a template", "Field kit");
        WINDOW.until("the kit is there", () -> WINDOW.session().event().getKits().size() == before + 1);
        Kit made = WINDOW.ask(() -> WINDOW.session().event().getKits().get(before));
        assertEquals("Field kit", WINDOW.ask(made::getName));
        assertFalse(WINDOW.ask(() -> made.getItems().isEmpty()));
        assertTrue(WINDOW.ask(() -> team().getKits().contains(made)));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(before, WINDOW.ask(() -> WINDOW.session().event().getKits().size()));
        assertEquals(carried, WINDOW.ask(() -> team().getKits().size()));
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()), "one step");
    }

    @Test
    void ticksThatAPhoneSentArePasted() {
        KitItem item = WINDOW.ask(() -> team().getKits().get(0).getItems().get(0));
        Stop stop = WINDOW.ask(() -> WINDOW.session().event().getPlan().getStops().stream().filter(each -> each.getTeam() == team())
                .findFirst().orElseThrow());
        paste("id,item,tick,stop,by,at\n\"" + item.getId() + "\",\"x\",car,\"" + stop.getId() + "\",\"Q5GLM\",2027-06-18T12:00:00Z\n");
        WINDOW.deed(PACKING, "Paste ticks");
        WINDOW.answer("Bring in a table of kits");
        WINDOW.until("the tick is there", () -> !item.getInCar().isEmpty());
        assertEquals("Q5GLM", WINDOW.ask(() -> item.getInCar().get(0).getBy()));
        assertEquals(stop, WINDOW.ask(() -> item.getInCar().get(0).getStop()));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertTrue(WINDOW.ask(() -> item.getInCar().isEmpty()));

        paste("id,item,tick,stop,by,at\nnobody,,packed,,Q5GLM,2027-06-18T12:00:00Z\n");
        WINDOW.deed(PACKING, "Paste ticks");
        WINDOW.answer("Bring in a table of kits", dialog -> assertTrue(RunningWorkbench.below(dialog, Label.class).stream()
                .anyMatch(label -> label.getText().contains("Line 2: No item has the id nobody."))));
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()), "nothing was changed");
    }

    private static void paste(String text) {
        WINDOW.ui(() -> {
            Clipboard clipboard = new Clipboard(DemoWindow.page().getWorkbenchWindow().getShell().getDisplay());
            clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()}, DND.CLIPBOARD);
            clipboard.dispose();
        });
    }

    @Test
    void everyFigureOfTheEventExplainsItself() {
        WINDOW.ui(() -> WINDOW.session().reveal(WINDOW.session().event()));
        PolicyText words = PolicyText.of(Literals.POLICIES__CALLERS_PERCENT);
        Label label = WINDOW.ask(() -> RunningWorkbench.below(DemoWindow.page().getWorkbenchWindow().getShell(), Label.class).stream()
                .filter(each -> each.getText().equals(words.label())).findFirst().orElse(null));
        assertNotNull(label);
        assertEquals(words.help(), WINDOW.ask(label::getToolTipText));
        Control field = WINDOW.ask(() -> {
            List<Control> row = List.of(label.getParent().getChildren());
            return row.get(row.indexOf(label) + 1);
        });
        assertEquals(words.help(), WINDOW.ask(field::getToolTipText));
    }
}
