package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.model.Forecast;

/** A forecast comes in through the wizard; what cannot be is refused in words and changes nothing. */
class ForecastsTest {

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    /** Ten kilometres from Basalt Mark. */
    private static final String HEAD = """
            # latitude: 63.70
            # longitude: -20.0
            # source: Invented office
            # issued: 2027-06-17T18:00Z
            """;
    private static final String HEADING = "time,temperature_c,humidity_percent,wind_kmh,gust_kmh,thunder_percent\n";

    private final OpenWizard wizard = new OpenWizard(WINDOW, "Import a forecast");

    @AfterEach
    void takeBack() {
        WINDOW.undoAll();
    }

    private void open() {
        WINDOW.ui(() -> DemoWindow.shown("org.straddle.ui.explorer"));
        WINDOW.command("org.straddle.ui.importForecast");
        wizard.awaitOpen();
    }

    private static Path file(String name, String text) throws IOException {
        Path file = WINDOW.beside(name);
        Files.writeString(file, text);
        return file;
    }

    private static List<Forecast> forecasts() {
        return WINDOW.ask(() -> List.copyOf(WINDOW.session().event().getForecasts()));
    }

    private String told() {
        return WINDOW.ask(() -> String.join("\n", RunningWorkbench.below(wizard.shell(), Label.class).stream().map(Label::getText).toList())
                + "\n" + String.join("\n", RunningWorkbench.below(wizard.shell(), Text.class).stream().map(Text::getText).toList()));
    }

    @Test
    void aForecastIsShownFirstAndComesInAsOneStep() throws IOException {
        int before = forecasts().size();
        open();
        wizard.type(file("hours.csv", HEAD + HEADING + "2027-06-18T12:00Z,31,60,20,35,0\n2027-06-18T13:00Z,33,55,25,40,40\n2027-06-19T12:00Z,9,80,50,75,0\n")
                .toString());
        wizard.press("Next");
        WINDOW.until("the preview is shown", () -> wizard.table() != null);
        assertEquals(2, WINDOW.ask(() -> wizard.table().getItemCount()), "a row for each day");
        String first = WINDOW.ask(() -> wizard.table().getItem(0).getText(2) + ": " + wizard.table().getItem(0).getText(5));
        assertEquals("18 Jun 2027: 31 to 33 °C, humidity 55 % at the warmest, wind up to 25 km/h, thunder; 2 hours", first);
        assertTrue(told().contains("Forecast for Basalt Mark on 2 days: 3 hours."), told());
        assertEquals(before, forecasts().size(), "nothing changes before the last step");
        wizard.press("Finish");
        wizard.awaitClosed();
        assertEquals(before + 2, forecasts().size());
        assertEquals("Basalt Mark", WINDOW.ask(() -> forecasts().get(before).getSite().getName()));
        assertNotNull(WINDOW.ask(() -> forecasts().get(before).getIssued()));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(before, forecasts().size(), "one step");
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()));
    }

    @Test
    void whatCannotBeIsRefusedInWordsAndChangesNothing() throws IOException {
        int before = forecasts().size();
        Map<String, String> wrong = Map.of(
                HEAD + HEADING + "2027-06-18T12:00Z,310,60,20,35,0\n", "No weather is like that",
                HEAD + "time,temperature,humidity_percent\n2027-06-18T12:00Z,31,60\n", "is no column with a unit",
                HEAD + HEADING + "2028-06-18T12:00Z,31,60,20,35,0\n", "the event is on other days",
                HEAD.replace("63.70", "48.1") + HEADING + "2027-06-18T12:00Z,31,60,20,35,0\n", "This forecast is for a place",
                "nothing at all", "");
        open();
        for (Map.Entry<String, String> each : wrong.entrySet()) {
            wizard.type(file("wrong.csv", each.getKey()).toString());
            wizard.press("Next");
            WINDOW.until("it says " + each.getValue(), () -> told().contains(each.getValue()));
            assertFalse(wizard.enabled("Finish"), each.getKey());
            assertTrue(WINDOW.ask(() -> wizard.table()) == null, "no preview of " + each.getKey());
        }
        wizard.press("Cancel");
        wizard.awaitClosed();
        assertEquals(before, forecasts().size());
        assertFalse(WINDOW.ask(() -> WINDOW.session().canUndo()));
    }
}
