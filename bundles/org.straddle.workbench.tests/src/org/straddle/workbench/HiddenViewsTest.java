package org.straddle.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.straddle.model.Fresh;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Team;
import org.straddle.ui.session.Edit;
import org.straddle.ui.workbench.PlanPerspective;
import org.straddle.ui.workbench.StartPerspective;

/** Views and forms that nobody sees work nothing out, and show how things stand once they come to the front. */
class HiddenViewsTest {

    private static final String FINDINGS = "org.straddle.ui.findings";
    private static final String EXPLORER = "org.straddle.ui.explorer";
    private static final String DAY_SHEET = "org.straddle.ui.daysheet.view";
    private static final String RESILIENCE = "org.straddle.ui.kit.resilience";
    private static final String NOTES = "org.straddle.ui.safety.notes";

    /** What the view of weak points works out. */
    private static final String RECKONING = "Reckoning what ends the work of a team";

    @RegisterExtension
    static final DemoWindow WINDOW = new DemoWindow();

    /** Names of the work that began behind the window. */
    private final Set<String> begun = ConcurrentHashMap.newKeySet();
    private final JobChangeAdapter listener = new JobChangeAdapter() {
        @Override
        public void running(IJobChangeEvent event) {
            begun.add(event.getJob().getName());
        }
    };

    @BeforeEach
    void listen() {
        Job.getJobManager().addJobChangeListener(listener);
    }

    @AfterEach
    void takeBack() {
        Job.getJobManager().removeJobChangeListener(listener);
        WINDOW.undoAll();
    }

    private static Team team() {
        return WINDOW.session().event().getTeams().get(0);
    }

    private static Site site() {
        return WINDOW.session().event().getSites().get(0);
    }

    private static void rename(String team, String site) {
        WINDOW.ui(() -> {
            WINDOW.session().execute(Edit.set(WINDOW.session().editingDomain(), team(), Literals.TEAM__NAME, team));
            WINDOW.session().execute(Edit.set(WINDOW.session().editingDomain(), site(), Literals.SITE__NAME, site));
        });
    }

    /** Computes what was edited, with all that follows from it in the views. */
    private void recompute() {
        begun.clear();
        WINDOW.ui(() -> WINDOW.session().computeNow());
        WINDOW.computed();
        WINDOW.until("nothing is under way", () -> Stream.of(Job.getJobManager().find(null))
                .noneMatch(job -> RECKONING.equals(job.getName())));
    }

    private static String offered(IViewPart view) {
        return String.join("; ", RunningWorkbench.below(DemoWindow.content(view.getSite().getId()), Combo.class).get(0).getItems());
    }

    @Test
    void aHiddenViewReckonsNothingAndShowsHowThingsStandOnceItIsSeen() {
        WINDOW.ui(() -> DemoWindow.shown(RESILIENCE));
        recompute();
        assertTrue(begun.contains(RECKONING), "the view is seen: " + begun);

        WINDOW.ui(() -> DemoWindow.shown(FINDINGS));
        rename("Unseen Lanterns", "Unseen Mark");
        recompute();
        assertFalse(begun.contains(RECKONING), "the view is hidden: " + begun);

        begun.clear();
        String teams = WINDOW.ask(() -> offered(DemoWindow.shown(RESILIENCE)));
        assertTrue(teams.contains("Unseen Lanterns"), teams);
        WINDOW.until("it is reckoned now", () -> begun.contains(RECKONING));
    }

    /** What is selected meanwhile is what a view shows that follows it. */
    @Test
    void aHiddenViewFollowsWhatIsSelectedMeanwhile() {
        WINDOW.ui(() -> {
            DemoWindow.shown(NOTES);
            DemoWindow.shown(FINDINGS);
        });
        Site other = WINDOW.ask(() -> WINDOW.session().event().getSites().get(2));
        WINDOW.choose(EXPLORER, List.of(other));
        assertEquals(WINDOW.ask(other::getName),
                WINDOW.ask(() -> RunningWorkbench.below(DemoWindow.content(NOTES), Combo.class).get(0).getText()));
    }

    @Test
    void aHiddenFormHasItsNewTitleAtOnceAndItsFieldsOnceItIsSeen() {
        WINDOW.ui(() -> WINDOW.session().reveal(site()));
        IEditorPart form = WINDOW.ask(() -> DemoWindow.page().getActiveEditor());
        WINDOW.ui(() -> WINDOW.session().reveal(team()));
        rename("Unseen Lanterns", "Unseen Mark");
        assertEquals("Unseen Mark", WINDOW.ask(form::getTitle));
        WINDOW.ui(() -> DemoWindow.page().activate(form));
        assertTrue(WINDOW.ask(() -> RunningWorkbench.below(form.getSite().getShell(), Text.class).stream()
                .anyMatch(text -> text.isVisible() && text.getText().equals("Unseen Mark"))));
        WINDOW.ui(() -> DemoWindow.page().closeAllEditors(false));
    }

    @Test
    void aHiddenFormGoesWithItsThing() {
        Site made = WINDOW.ask(() -> {
            Site site = Fresh.site();
            site.setName("Short-lived Mark");
            WINDOW.session().execute(Edit.add(WINDOW.session().editingDomain(), WINDOW.session().event(), Literals.EVENT__SITES, site, "site"));
            return site;
        });
        WINDOW.ui(() -> {
            WINDOW.session().reveal(made);
            WINDOW.session().reveal(team());
        });
        assertEquals(2, WINDOW.ask(() -> DemoWindow.page().getEditorReferences().length));
        WINDOW.ui(() -> WINDOW.session().undo());
        assertEquals(1, WINDOW.ask(() -> DemoWindow.page().getEditorReferences().length));
        WINDOW.ui(() -> DemoWindow.page().closeAllEditors(false));
    }

    private static boolean explorerShows(String words) {
        Control content = (Control) DemoWindow.page().findView(EXPLORER).getSite().getService(MPart.class).getWidget();
        Tree tree = RunningWorkbench.below(content, Tree.class).get(0);
        return tree.isVisible() && Stream.of(tree.getItems()).anyMatch(item -> shows(item, words));
    }

    private static boolean shows(TreeItem item, String words) {
        return item.getText().contains(words) || Stream.of(item.getItems()).anyMatch(each -> shows(each, words));
    }

    @Test
    void whatWasCoveredByALargePartOrByThePageWithoutAnEventIsUpToDateAfterwards() {
        WINDOW.ui(() -> DemoWindow.shown(EXPLORER));
        WINDOW.ui(() -> DemoWindow.page().setPartState(reference(), IWorkbenchPage.STATE_MAXIMIZED));
        rename("Unseen Lanterns", "Covered Mark");
        WINDOW.ui(() -> DemoWindow.page().setPartState(reference(), IWorkbenchPage.STATE_RESTORED));
        WINDOW.until("the tree is up to date", () -> explorerShows("Covered Mark") && explorerShows("Unseen Lanterns"));

        WINDOW.ui(() -> perspective(StartPerspective.ID));
        rename("Away Lanterns", "Away Mark");
        WINDOW.ui(() -> perspective(PlanPerspective.ID));
        WINDOW.until("the tree is up to date", () -> explorerShows("Away Mark") && explorerShows("Away Lanterns"));
    }

    private static IWorkbenchPartReference reference() {
        return DemoWindow.page().findViewReference(DAY_SHEET);
    }

    private static void perspective(String id) {
        DemoWindow.page().setPerspective(PlatformUI.getWorkbench().getPerspectiveRegistry().findPerspectiveWithId(id));
    }
}
