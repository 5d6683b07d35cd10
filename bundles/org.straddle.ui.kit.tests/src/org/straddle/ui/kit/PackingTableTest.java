package org.straddle.ui.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.straddle.kit.PackingList;
import org.straddle.kit.PackingRow;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.Tick;

/** The list as a user meets it, on a shell of its own. */
class PackingTableTest {

    private static final int PACKED = 8;

    private final Team team = Fresh.team();
    private final Kit kit = Fresh.kit();
    private final List<String> asked = new ArrayList<>();
    private Shell shell;
    private PackingTable table;
    private Table rows;

    @BeforeEach
    void open() {
        team.getKits().add(kit);
        item("Lantern", 2);
        item("Rope", 1);
        item("Kettle", 1);
        shell = new Shell(Display.getDefault());
        table = new PackingTable(shell, (pressed, packed) -> asked.add((packed ? "pack " : "clear ")
                + pressed.stream().map(PackingRow::name).toList()), row -> asked.add("open " + row.name()));
        rows = (Table) table.control();
        show();
    }

    @AfterEach
    void close() {
        shell.dispose();
    }

    @Test
    void everyItemIsARowWithItsCountAndNoTick() {
        assertEquals(3, rows.getItemCount());
        TableItem lantern = row("Lantern");
        assertEquals("2", lantern.getText(1));
        assertFalse(lantern.getChecked());
        assertEquals("", lantern.getText(PACKED));
    }

    @Test
    void aTickShowsWhoPackedWhenInTheTimeOfTheEvent() {
        Tick tick = StraddleFactory.eINSTANCE.createTick();
        tick.setBy("Q2MRL");
        tick.setAt(Instant.parse("2027-06-17T20:15:00Z"));
        kit.getItems().get(1).setTick(tick);
        show();
        assertTrue(row("Rope").getChecked());
        assertEquals("✓ Q2MRL Thu 17 Jun 22:15", row("Rope").getText(PACKED));
        assertFalse(row("Kettle").getChecked());
    }

    @Test
    void theBoxesAreTheTicksThatWereChosen() {
        Tick tick = StraddleFactory.eINSTANCE.createTick();
        tick.setBy("Q2MRL");
        kit.getItems().get(1).setReturned(tick);
        show();
        assertFalse(row("Rope").getChecked());
        table.boxes(TickKind.RETURNED);
        assertTrue(row("Rope").getChecked());
        assertFalse(row("Kettle").getChecked());
        assertEquals("✓ Q2MRL", row("Rope").getText(PACKED + TickKind.RETURNED.ordinal()).strip());
    }

    /** The Space key presses one box after the other; the user means one step. */
    @Test
    void boxesThatArePressedTogetherAreOneQuestion() {
        press("Lantern");
        press("Kettle");
        while (shell.getDisplay().readAndDispatch()) {
            // what was put off
        }
        assertEquals(List.of("pack [Lantern, Kettle]"), asked);
    }

    @Test
    void whatIsSelectedStaysSelectedAndTheFirstRowIsWhereTheKeyboardStarts() {
        assertEquals(List.of(rows.getItem(0).getText(0)), table.chosen().stream().map(PackingRow::name).toList());
        rows.setSelection(row("Kettle"));
        kit.getItems().remove(0);
        show();
        assertEquals(List.of("Kettle"), table.chosen().stream().map(PackingRow::name).toList());
    }

    private void show() {
        table.show(PackingList.of(team), ZoneId.of("Etc/GMT-2"));
    }

    private void press(String name) {
        TableItem row = row(name);
        row.setChecked(!row.getChecked());
        Event event = new Event();
        event.item = row;
        event.detail = SWT.CHECK;
        rows.notifyListeners(SWT.Selection, event);
    }

    private TableItem row(String name) {
        for (TableItem item : rows.getItems()) {
            if (item.getText(0).equals(name)) {
                return item;
            }
        }
        throw new AssertionError("no row " + name);
    }

    private void item(String name, int count) {
        KitItem item = Fresh.kitItem();
        item.setName(name);
        item.setCount(count);
        kit.getItems().add(item);
    }
}
