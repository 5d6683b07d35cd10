package org.straddle.ui.sky.pass;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.sky.Horizon;
import org.straddle.sky.Place;
import org.straddle.sky.Window;
import org.straddle.sky.prediction.Ephemeris;
import org.straddle.sky.prediction.PassError;

/**
 * All that the sheet of one pass says, worked out once. Making it takes some milliseconds, more when the bird has not
 * been followed yet: not for the UI thread.
 *
 * @param hasMask  whether anybody took a mask at the site
 * @param moments  AOS, TCA, LOS
 * @param lit      when the sun shines on the bird, within the pass
 * @param nearestSun the look of the arc that is nearest to the sun, if the sun is up
 * @param workers  the teams that work it, by time
 * @param orientationNotice what to know about Earth orientation data; empty when they cover the event
 */
public record PassSheet(SitePass found, ZoneId zone, Horizon horizon, boolean hasMask, Arc arc, List<Moment> moments,
        List<Window> lit, Optional<NearestSun> nearestSun, List<Dial> dials, PassError error, TimeGrain grain,
        List<Worker> workers, Optional<String> orientationNotice) {

    /** Where the bird comes nearest to the sun while above the mask. */
    public record NearestSun(ArcPoint look, double separationDeg) {
    }

    /** Empty when the bird has no element set any more. */
    public static Optional<PassSheet> of(Outlook outlook, SitePass found) {
        return outlook.ephemeris(found.bird(), found.pass().tca()).map(bird -> of(outlook, found, bird));
    }

    private static PassSheet of(Outlook outlook, SitePass found, Ephemeris bird) {
        Place place = outlook.place(found.site());
        Horizon horizon = outlook.horizon(found.site());
        Arc arc = Arc.of(bird, place, horizon, found.pass());
        // At the very edge the bird counts as hidden.
        Instant risen = found.pass().aos().plusMillis(50);
        List<Moment> moments = List.of(
                moment("AOS", found.pass().aos(), arc, place, arc.light(risen), found.pass().startsBefore()),
                moment("TCA", found.pass().tca(), arc, place, arc.light(found.pass().tca()), false),
                moment("LOS", found.pass().los(), arc, place, arc.light(found.pass().los()), found.pass().endsAfter()));
        PassError error = outlook.error(found.pass());
        List<Worker> workers = Worker.of(outlook.event(), found);
        double agreedMhz = workers.stream().mapToDouble(worker -> worker.turn().getDownlinkMhz())
                .filter(mhz -> mhz > 0).findFirst().orElse(0);
        return new PassSheet(found, outlook.zone(), horizon, !found.site().getHorizon().isEmpty(), arc, moments,
                bird.sunlit(found.pass().window()), nearestSun(arc, moments.get(1).sun()),
                Dial.of(found.bird(), agreedMhz), error, TimeGrain.of(error.timeErrorS()), workers, outlook.orientationNotice());
    }

    private static Moment moment(String word, Instant at, Arc arc, Place place, Light light, boolean cut) {
        return new Moment(word, at, arc.at(at), SunSeen.of(place, at), light, cut);
    }

    /** The sun stands still: within a pass of a low bird it moves less than the bird does in seconds. */
    private static Optional<NearestSun> nearestSun(Arc arc, SunSeen sun) {
        if (!sun.isUp()) {
            return Optional.empty();
        }
        return arc.pieces().stream().filter(piece -> piece.light() != Light.HIDDEN)
                .flatMap(piece -> piece.points().stream())
                .map(point -> new NearestSun(point, sun.separationDeg(point.azimuthDeg(), point.elevationDeg())))
                .min(Comparator.comparingDouble(NearestSun::separationDeg));
    }

    public Moment aos() {
        return moments.get(0);
    }

    public Moment tca() {
        return moments.get(1);
    }

    public Moment los() {
        return moments.get(2);
    }

    /** Whether the sun stands behind the mask. */
    public boolean isSunHidden() {
        return tca().sun().elevationDeg() < horizon.elevationDegAt(tca().sun().azimuthDeg());
    }

    /** How far the dial may be off because the pass may be early or late, kHz, where that is worst. */
    public double dialErrorKhz(Dial dial) {
        double worst = 0;
        ArcPoint last = null;
        for (ArcPoint next : (Iterable<ArcPoint>) arc.points()::iterator) {
            if (last != null && next.at().isAfter(last.at())) {
                double seconds = Duration.between(last.at(), next.at()).toNanos() / 1e9;
                worst = Math.max(worst,
                        Math.abs(dial.addKhz(next.rangeRateKmS()) - dial.addKhz(last.rangeRateKmS())) / seconds);
            }
            last = next;
        }
        return worst * error.timeErrorS();
    }
}
