package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.model.Site;
import org.straddle.model.SitesTaken;
import org.straddle.model.Stop;
import org.straddle.worth.SiteReadiness;

/** The planning view's choice of sites, and what it says must be settled before departure. */
class PlanningTest {

    private static final String PLANNING = "org.straddle.ui.planning";

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    @AfterEach
    void takeBack() {
        WINDOW.undoAll();
        WINDOW.computed();
    }

    private static org.straddle.model.Event event() {
        return WINDOW.session().event();
    }

    private static boolean ready(Site site) {
        return List.of(event().getFirstDay(), event().getLastDay()).stream()
                .allMatch((LocalDate day) -> SiteReadiness.of(site, day, event().getPolicies()).isReady());
    }

    private static Combo sites() {
        return RunningWorkbench.below(DemoWindow.content(PLANNING), Combo.class).get(0);
    }

    private static Button button(String text) {
        return RunningWorkbench.below(DemoWindow.content(PLANNING), Button.class).stream()
                .filter(button -> button.getText().replace("&", "").equals(text)).findFirst().orElseThrow();
    }

    private static Set<Site> planned(String choice) {
        WINDOW.ui(() -> {
            RunningWorkbench.below(DemoWindow.content(PLANNING), Spinner.class).get(0).setSelection(1);
            sites().select(sites().indexOf(choice));
            button("Search").notifyListeners(SWT.Selection, new Event());
        });
        WINDOW.until("a plan is offered", () -> button("Use this plan").isEnabled());
        WINDOW.ui(() -> button("Use this plan").notifyListeners(SWT.Selection, new Event()));
        return WINDOW.ask(() -> event().getPlan().getStops().stream().filter(stop -> !stop.isPinned()).map(Stop::getSite)
                .collect(Collectors.toSet()));
    }

    @Test
    void aSearchMayBeToldToUseOnlyReadySites() {
        SitesTaken usual = WINDOW.ask(() -> event().getPolicies().getSitesTaken());
        assertEquals(List.of("ready ones first (event)", "ready ones first", "only ready ones", "all"),
                WINDOW.ask(() -> List.of(sites().getItems())));
        assertTrue(planned("all").stream().anyMatch(site -> !WINDOW.ask(() -> ready(site))), "some sites of the demo are not ready");
        takeBack();
        Set<Site> only = planned("only ready ones");
        assertFalse(only.isEmpty());
        assertEquals(List.of(), only.stream().filter(site -> !WINDOW.ask(() -> ready(site))).map(Site::getName).toList());
        assertEquals(usual, WINDOW.ask(() -> event().getPolicies().getSitesTaken()), "the event keeps its own choice");
    }

    private static List<List<String>> toDo() {
        return WINDOW.ask(() -> {
            Table table = RunningWorkbench.below(DemoWindow.content(PLANNING), Table.class).stream()
                    .filter(each -> each.getColumnCount() > 1 && each.getColumn(1).getText().equals("Missing")).findFirst().orElseThrow();
            return List.of(table.getItems()).stream().map(item -> IntStream.range(0, 4).mapToObj(item::getText).toList()).toList();
        });
    }

    @Test
    void whatToSettleBeforeDepartureStandsInTheOrderOfWhatItBrings() {
        WINDOW.until("the list is there", () -> !toDo().isEmpty());
        List<List<String>> rows = toDo();
        List<Double> brings = rows.stream().map(row -> Double.parseDouble(row.get(2))).toList();
        assertEquals(brings.stream().sorted((a, b) -> Double.compare(b, a)).toList(), brings);
        Set<String> open = WINDOW.ask(() -> event().getPlan().getStops().stream()
                .filter(stop -> !SiteReadiness.of(stop.getSite(), LocalDate.ofInstant(stop.getArrival(),
                        java.time.ZoneId.of(event().getZone())), event().getPolicies()).isReady())
                .map(stop -> stop.getSite().getName()).collect(Collectors.toSet()));
        assertEquals(open, rows.stream().map(row -> row.get(0)).collect(Collectors.toSet()));
        assertTrue(Set.of("visit", "review", "permission").containsAll(List.of(rows.get(0).get(1).split(", "))), rows.get(0).toString());

        WINDOW.ui(() -> WINDOW.session().execute(org.eclipse.emf.edit.command.SetCommand.create(WINDOW.session().editingDomain(), event(),
                org.straddle.model.StraddlePackage.Literals.EVENT__PLAN, org.eclipse.emf.edit.command.SetCommand.UNSET_VALUE)));
        WINDOW.until("nothing is left to do without a plan", () -> toDo().isEmpty());
    }
}
