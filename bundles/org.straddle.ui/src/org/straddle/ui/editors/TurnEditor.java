package org.straddle.ui.editors;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.outlook.things.Times;
import org.straddle.sky.Pass;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Instants;
import org.straddle.ui.fields.Numbers;

/** A pass, or the part of it, that a team works; the pass it belongs to is told beside. */
public final class TurnEditor extends ThingEditor<Turn> {

    public TurnEditor() {
        super(Turn.class);
    }

    @Override
    void fields(FieldForm form, Turn turn) {
        Event event = session().event();
        form.section("Turn", "");
        form.reference("Bird", event::getBirds, turn, Literals.TURN__BIRD);
        form.text("Start", "", new Instants(() -> Outlook.zoneOf(event), () -> known(turn)), turn,
                Literals.TURN__START);
        form.text("End", "", new Instants(() -> Outlook.zoneOf(event), () -> known(turn)), turn, Literals.TURN__END);
        form.check("Pinned: no planner may move it", turn, Literals.TURN__PINNED);

        form.section("On the air", "");
        form.text("Agreed downlink", "MHz, 0 for none", Numbers.between(0, 300_000), turn,
                Literals.TURN__DOWNLINK_MHZ);
        form.lines("Note", 3, turn, Literals.TURN__NOTE);
        form.told("Pass", () -> pass(turn, event));
    }

    private static Instant known(Turn turn) {
        Stop stop = (Stop) turn.eContainer();
        return Stream.of(turn.getStart(), turn.getEnd(), stop == null ? null : stop.getArrival())
                .filter(instant -> instant != null).findFirst().orElse(null);
    }

    private String pass(Turn turn, Event event) {
        if (turn.getBird() == null || turn.getStart() == null || turn.getEnd() == null
                || !(turn.eContainer() instanceof Stop stop) || stop.getSite() == null) {
            return "Enter bird, start and end to see the pass.";
        }
        if (session().computed().isEmpty()) {
            return "Being computed…";
        }
        return covering(turn, stop.getSite()).map(pass -> String.format(Locale.ROOT,
                "%s–%s (%s local), peak %.0f° towards %.0f° at %s", Times.utcSeconds(pass.aos()),
                Times.utcSeconds(pass.los()), Times.local(pass.aos(), Outlook.zoneOf(event)), pass.peakElevationDeg(),
                pass.tcaAzimuthDeg(), Times.utcSeconds(pass.tca())))
                .orElse("The bird is not above this site's horizon then.");
    }

    private Optional<Pass> covering(Turn turn, Site site) {
        List<SitePass> passes = session().computed().orElseThrow().outlook().passes();
        return passes.stream().filter(candidate -> candidate.site().getId().equals(site.getId())
                && candidate.bird().getId().equals(turn.getBird().getId())).map(SitePass::pass)
                .filter(pass -> pass.aos().isBefore(turn.getEnd()) && pass.los().isAfter(turn.getStart()))
                .findFirst();
    }
}
