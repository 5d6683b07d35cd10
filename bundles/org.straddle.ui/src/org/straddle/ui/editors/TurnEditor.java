package org.straddle.ui.editors;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.straddle.model.Event;
import org.straddle.model.Site;
import org.straddle.model.Stop;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Turn;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Pass;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Instants;
import org.straddle.ui.fields.Megahertz;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/** A pass, or the part of it, that a team works; the pass it belongs to is told beside. */
public final class TurnEditor extends ThingEditor<Turn> {

    private static final Catalogue TEXTS = Catalogue.of(TurnEditor.class);

    public TurnEditor() {
        super(Turn.class);
    }

    @Override
    void fields(FieldForm form, Turn turn) {
        Event event = session().event();
        form.section(TEXTS.text("turnEditor.section.turn"), "");
        form.reference(TEXTS.text("turnEditor.bird"), event::getBirds, turn, Literals.TURN__BIRD);
        form.text(TEXTS.text("turnEditor.start"), "", new Instants(() -> Outlook.zoneOf(event), () -> known(turn)), turn,
                Literals.TURN__START);
        form.text(TEXTS.text("turnEditor.end"), "", new Instants(() -> Outlook.zoneOf(event), () -> known(turn)), turn, Literals.TURN__END);
        form.check(TEXTS.text("turnEditor.pinned"), turn, Literals.TURN__PINNED);

        form.section(TEXTS.text("turnEditor.section.onTheAir"), "");
        form.text(TEXTS.text("turnEditor.agreedDownlink"), TEXTS.text("turnEditor.agreedDownlink.unit"), new Megahertz(), turn,
                Literals.TURN__DOWNLINK_MHZ);
        form.lines(TEXTS.text("turnEditor.note"), 3, turn, Literals.TURN__NOTE);
        form.told(TEXTS.text("turnEditor.pass"), () -> pass(turn, event));
    }

    private static Instant known(Turn turn) {
        Stop stop = (Stop) turn.eContainer();
        return Stream.of(turn.getStart(), turn.getEnd(), stop == null ? null : stop.getArrival())
                .filter(instant -> instant != null).findFirst().orElse(null);
    }

    private String pass(Turn turn, Event event) {
        if (turn.getBird() == null || turn.getStart() == null || turn.getEnd() == null
                || !(turn.eContainer() instanceof Stop stop) || stop.getSite() == null) {
            return TEXTS.text("turnEditor.pass.incomplete");
        }
        if (session().computed().isEmpty()) {
            return TEXTS.text("turnEditor.pass.computing");
        }
        TimeText times = TimeText.of(Outlook.zoneOf(event));
        return covering(turn, stop.getSite()).map(pass -> TEXTS.text("turnEditor.pass.told",
                "during", times.during(pass.aos(), pass.los()), "peak", pass.peakElevationDeg(),
                "azimuth", pass.tcaAzimuthDeg(), "time", times.seconds(pass.tca())))
                .orElse(TEXTS.text("turnEditor.pass.none"));
    }

    private Optional<Pass> covering(Turn turn, Site site) {
        List<SitePass> passes = session().computed().orElseThrow().outlook().passes();
        return passes.stream().filter(candidate -> candidate.site().getId().equals(site.getId())
                && candidate.bird().getId().equals(turn.getBird().getId())).map(SitePass::pass)
                .filter(pass -> pass.aos().isBefore(turn.getEnd()) && pass.los().isAfter(turn.getStart()))
                .findFirst();
    }
}
