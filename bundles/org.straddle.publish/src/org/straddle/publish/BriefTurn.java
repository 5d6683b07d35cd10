package org.straddle.publish;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;

import org.straddle.model.Bird;
import org.straddle.model.Stop;
import org.straddle.model.Turn;
import org.straddle.model.WorkMode;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Pass;
import org.straddle.sky.prediction.PassError;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * One turn of a brief.
 *
 * @param sky the pass over the site's horizon mask; empty when there is none at the time of the turn
 * @param error how far times may be off, in words; empty without a pass
 * @param chance that the turn is kept as published, in words; empty when nobody can say
 */
public record BriefTurn(String bird, String mode, Moment start, Moment end, Optional<Sky> sky, String uplink,
        String tone, String downlink, String note, String error, String chance) {

    private static final Catalogue TEXTS = Catalogue.of(BriefTurn.class);

    /** A pass in figures: times, azimuths from true north in whole degrees, and the peak elevation. */
    public record Sky(Moment aos, Moment tca, Moment los, String aosAzimuth, String tcaAzimuth, String losAzimuth,
            String peak) {
    }

    static BriefTurn of(Outlook outlook, Clock clock, LocalDate date, Stop stop, Turn turn,
            PlanHold hold) {
        Bird bird = turn.getBird();
        Optional<Pass> pass = Scheduled.pass(outlook, stop, turn).map(SitePass::pass);
        Duration error = error(pass);
        return new BriefTurn(Line.of(bird.getName(), TEXTS.text("announcement.unnamedBird")), mode(bird),
                clock.moment(turn.getStart(), error, date), clock.moment(turn.getEnd(), error, date),
                pass.map(p -> sky(clock, p, error, date)), Frequencies.uplink(turn), Frequencies.tone(bird),
                Frequencies.downlink(turn), Line.of(turn.getNote()),
                pass.isEmpty() ? "" : "±" + Clock.step(error) + " s", hold.chance(turn));
    }

    /** A whole minute where nothing better is known. */
    static Duration error(Optional<Pass> pass) {
        return pass.map(p -> Duration.ofMillis((long) Math.ceil(1000 * PassError.of(p).timeErrorS())))
                .orElse(Duration.ofMinutes(1));
    }

    static String mode(Bird bird) {
        String word = bird.getMode() == WorkMode.FM ? "FM" : bird.getMode().getLiteral();
        return word + (Frequencies.isInverted(bird) ? TEXTS.text("briefTurn.inverted") : "");
    }

    private static Sky sky(Clock clock, Pass pass, Duration error, LocalDate date) {
        return new Sky(clock.moment(pass.aos(), error, date), clock.moment(pass.tca(), error, date),
                clock.moment(pass.los(), error, date), azimuth(pass.aosAzimuthDeg()), azimuth(pass.tcaAzimuthDeg()),
                azimuth(pass.losAzimuthDeg()), Math.round(pass.peakElevationDeg()) + "°");
    }

    private static String azimuth(double degrees) {
        return FigureText.inCurrent().azimuth(degrees);
    }
}
