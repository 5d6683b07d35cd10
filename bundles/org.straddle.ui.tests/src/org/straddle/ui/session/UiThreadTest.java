package org.straddle.ui.session;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;

/** Needs a display, as the workbench does. */
class UiThreadTest {

    @Test
    void newsForAWidgetThatIsGoneIsDropped() {
        Display display = Display.getDefault();
        Shell open = new Shell(display);
        Shell closed = new Shell(display);
        List<String> heard = new ArrayList<>();
        UiThread.later(closed, () -> heard.add("closed before it was heard"));
        closed.dispose();
        assertDoesNotThrow(() -> UiThread.later(closed, () -> heard.add("closed before it was sent")));
        UiThread.later(open, () -> heard.add("open"));
        while (heard.isEmpty() && display.readAndDispatch()) {
            continue;
        }
        open.dispose();
        assertEquals(List.of("open"), heard);
    }
}
