package org.straddle.ui.kit;

import java.util.List;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.straddle.kit.team.TeamEnergy;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.ui.parts.EmptyOr;
import org.straddle.ui.parts.TabLeaves;
import org.straddle.ui.parts.ThingView;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.NewestJob;
import org.straddle.words.Catalogue;

/** How the batteries of a team empty over each day of the plan, drawn and in words. */
public final class EnergyView extends ThingView<Team> {

    private static final Catalogue TEXTS = Catalogue.of(EnergyView.class);

    public static final String ID = "org.straddle.ui.kit.energy";

    private final EventSession session = session();
    private final NewestJob<Shown> reckoning = new NewestJob<>(Display.getCurrent(),
            new NewestJob.Kind(TEXTS.text("energy.reckoning"), false, Job.SHORT, TEXTS.text("energy.reckoning.failed")));
    private EmptyOr<SashForm> pages;
    private EnergyChart chart;
    private Text words;
    private Label summary;

    private record Shown(String teamId, List<TeamEnergy> supplies, boolean planned) {
    }

    public EnergyView() {
        super(TEXTS.text("packingView.eventHasTeams"), TEXTS.text("resilience.makeTeam"));
    }

    @Override
    protected List<Team> things(Event event) {
        return event.getTeams();
    }

    @Override
    protected Object meant(Object selected) {
        return selected instanceof Stop stop ? stop.getTeam() : selected;
    }

    @Override
    protected Composite content(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 4).spacing(8, 4).applyTo(body);
        chooser(body, TEXTS.text("packingView.team"));
        summary = new Label(body, SWT.NONE);
        summary.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        pages = new EmptyOr<>(body, "", "", this::course);
        pages.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 3, 1));
        return body;
    }

    private SashForm course(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        chart = new EnergyChart(sash);
        words = new Text(sash, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
        words.getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(asked -> asked.result = TEXTS.text("energy.words")));
        TabLeaves.on(words);
        sash.setWeights(70, 30);
        return sash;
    }

    @Override
    public void setFocus() {
        if (thing() == null || words.getText().isEmpty()) {
            pages().setFocus();
        } else {
            words.setFocus();
        }
    }

    @Override
    protected void show(Team team) {
        session.computed().ifPresentOrElse(computed -> reckon(team, computed),
                () -> pages.say(TEXTS.text("resilience.computing"), TEXTS.text("resilience.computing.wait")));
    }

    @Override
    public void computed(EventSession computing, Computed computed) {
        if (thing() != null) {
            reckon(thing(), computed);
        }
    }

    private void reckon(Team team, Computed computed) {
        Outlook outlook = computed.outlook();
        computed.snapshot().getTeams().stream().filter(each -> each.getId().equals(team.getId())).findFirst().ifPresent(
                then -> reckoning.run(monitor -> {
                    Itinerary itinerary = Itinerary.of(outlook.event());
                    return new Shown(then.getId(), TeamEnergy.of(then, itinerary, outlook.policies(), outlook.zone()),
                            !itinerary.of(then).isEmpty());
                }, shown -> say(shown, outlook), failure -> { }));
    }

    private void say(Shown shown, Outlook outlook) {
        if (thing() == null || !shown.teamId().equals(thing().getId()) || words.isDisposed()) {
            return;
        }
        if (!shown.planned()) {
            pages.say(TEXTS.text("resilience.noWork"), TEXTS.text("resilience.noWork.plan"));
        } else if (shown.supplies().isEmpty()) {
            pages.say(TEXTS.text("energy.unknown"), TEXTS.text("energy.unknown.enter"));
        } else {
            chart.show(shown.supplies(), outlook.zone());
            words.setText(String.join("\n\n", TeamEnergy.lines(shown.supplies())));
            pages.showContent(true);
        }
        long shortDays = shown.supplies().stream().flatMap(supply -> supply.days().stream()).filter(day -> day.marginWh() < 0).count();
        summary.setText(shown.planned() && !shown.supplies().isEmpty() ? TEXTS.text("energy.summary", "days", shortDays) : "");
    }

    @Override
    public void dispose() {
        reckoning.stop();
        super.dispose();
    }
}
