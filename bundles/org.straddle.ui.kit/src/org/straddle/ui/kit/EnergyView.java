package org.straddle.ui.kit;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.straddle.kit.team.TeamEnergy;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.ui.parts.TabLeaves;
import org.straddle.ui.session.Computed;
import org.straddle.words.Catalogue;

/** How the batteries of a team empty over each day of the plan, drawn and in words. */
public final class EnergyView extends TeamAnswerView<EnergyView.Shown> {

    private static final Catalogue TEXTS = Catalogue.of(EnergyView.class);

    public static final String ID = "org.straddle.ui.kit.energy";

    private EnergyChart chart;
    private Text words;

    record Shown(String teamId, List<TeamEnergy> supplies, boolean planned) {
    }

    public EnergyView() {
        super(TEXTS.text("energy.makeTeam"), TEXTS.text("energy.reckoning"), TEXTS.text("energy.reckoning.failed"));
    }

    @Override
    SashForm answers(Composite parent) {
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
    Shown answer(Team team, Computed computed) {
        Outlook outlook = computed.outlook();
        Itinerary itinerary = Itinerary.of(outlook.event());
        return new Shown(team.getId(), TeamEnergy.of(team, itinerary, outlook.policies(), outlook.zone()),
                !itinerary.of(team).isEmpty());
    }

    @Override
    String teamId(Shown shown) {
        return shown.teamId();
    }

    @Override
    void say(Shown shown, Computed computed) {
        if (!shown.planned()) {
            answerPages().say(TEXTS.text("resilience.noWork"), TEXTS.text("resilience.noWork.plan"));
        } else if (shown.supplies().isEmpty()) {
            answerPages().say(TEXTS.text("energy.unknown"), TEXTS.text("energy.unknown.enter"));
        } else {
            chart.show(shown.supplies(), computed.outlook().zone());
            words.setText(String.join("\n\n", TeamEnergy.lines(shown.supplies())));
            answerPages().showContent(true);
        }
        long shortDays = shown.supplies().stream().flatMap(supply -> supply.days().stream()).filter(day -> day.marginWh() < 0).count();
        sumUp(shown.planned() && !shown.supplies().isEmpty() ? TEXTS.text("energy.summary", "days", shortDays) : "");
    }
}
