package org.straddle.ui.kit;

import java.util.List;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.straddle.model.Event;
import org.straddle.model.Stop;
import org.straddle.model.Team;
import org.straddle.ui.parts.EmptyOr;
import org.straddle.ui.parts.OwnRow;
import org.straddle.ui.parts.ThingView;
import org.straddle.ui.session.Computed;
import org.straddle.ui.session.EventSession;
import org.straddle.ui.session.NewestJob;
import org.straddle.words.Catalogue;

/**
 * What is reckoned about the kit of one team in the background, with a line that sums it up. Follows a team or a stop that
 * is selected elsewhere.
 *
 * @param <A> the answer
 */
abstract class TeamAnswerView<A> extends ThingView<Team> {

    private static final Catalogue TEXTS = Catalogue.of(TeamAnswerView.class);

    /** Pixels; where there is less room than the words need, they go on in a second line. */
    private static final int SUMMARY_WIDTH = 200;

    private final NewestJob<A> reckoning;
    private Label summary;
    private EmptyOr<SashForm> pages;

    /**
     * @param makeTeam  what to do in an event without teams
     * @param reckoning what the work is called
     * @param failed    what is said when it broke off
     */
    TeamAnswerView(String makeTeam, String reckoning, String failed) {
        super(TEXTS.text("packingView.eventHasTeams"), makeTeam);
        this.reckoning = new NewestJob<>(Display.getCurrent(), new NewestJob.Kind(reckoning, false, Job.SHORT, failed));
    }

    /** Off the UI thread. @param team of the computed event */
    abstract A answer(Team team, Computed computed);

    /** The id of the team that an answer is about. */
    abstract String teamId(A answer);

    abstract SashForm answers(Composite parent);

    /** Makes more choices beside that of the team; how many controls they are. */
    int choices(Composite row) {
        return 0;
    }

    abstract void say(A answer, Computed computed);

    final EmptyOr<SashForm> answerPages() {
        return pages;
    }

    final void sumUp(String sentence) {
        summary.setText(sentence);
        summary.setToolTipText(sentence);
        summary.requestLayout();
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
        chooser(body, TEXTS.text("packingView.team"));
        int columns = 3 + choices(body);
        GridLayoutFactory.fillDefaults().numColumns(columns).margins(6, 4).spacing(8, 4).applyTo(body);
        summary = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(SUMMARY_WIDTH, SWT.DEFAULT).applyTo(summary);
        OwnRow.whereNarrow(summary, SUMMARY_WIDTH);
        pages = new EmptyOr<>(body, "", "", this::answers);
        pages.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, columns, 1));
        return body;
    }

    @Override
    protected void show(Team team) {
        session().computed().ifPresentOrElse(computed -> reckon(team, computed),
                () -> pages.say(TEXTS.text("resilience.computing"), TEXTS.text("resilience.computing.wait")));
    }

    @Override
    public void computed(EventSession computing, Computed computed) {
        if (thing() != null) {
            reckon(thing(), computed);
        }
    }

    /** Off this thread, about the team as it was when the event was computed. */
    final void reckon(Team team, Computed computed) {
        computed.snapshot().getTeams().stream().filter(each -> each.getId().equals(team.getId())).findFirst().ifPresent(
                then -> reckoning.run(monitor -> answer(then, computed), answer -> {
                    if (thing() != null && teamId(answer).equals(thing().getId()) && !summary.isDisposed()) {
                        say(answer, computed);
                    }
                }, failure -> { }));
    }

    @Override
    public void dispose() {
        reckoning.stop();
        super.dispose();
    }
}
