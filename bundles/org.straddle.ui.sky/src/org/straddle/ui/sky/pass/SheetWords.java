package org.straddle.ui.sky.pass;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.straddle.model.BirdState;
import org.straddle.outlook.things.ThingText;
import org.straddle.outlook.things.Times;
import org.straddle.sky.Pass;
import org.straddle.sky.Window;

/** What the sheet says in words and figures: the same on the screen, on paper and for a screen reader. */
public final class SheetWords {

    /** Nearer to the sun than this, a hand that points at the bird leads the eye to the sun. Our own choice. */
    private static final double NEAR_SUN_DEG = 20;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM uuuu", Locale.UK);

    private final PassSheet sheet;
    private final Pass pass;

    public SheetWords(PassSheet sheet) {
        this.sheet = sheet;
        this.pass = sheet.found().pass();
    }

    /** A row of the table of moments: a heading and what it says at AOS, TCA and LOS. */
    public record MomentRow(String heading, List<String> cells) {
        public MomentRow {
            cells = List.copyOf(cells);
        }
    }

    /** A heading and a sentence. */
    public record Fact(String heading, String text) {
    }

    /** {@code Tern-1 (demo) over Skerry corner, Fri 18 Jun 2027 (UTC)}. */
    public String title() {
        return ThingText.of(sheet.found().bird()) + " over " + ThingText.of(sheet.found().site()) + ", "
                + DAY.format(sheet.grain().rounded(pass.aos()).atOffset(ZoneOffset.UTC)) + " (UTC)";
    }

    public List<MomentRow> moments() {
        List<MomentRow> rows = new ArrayList<>();
        boolean same = sheet.moments().stream()
                .allMatch(m -> sheet.zone().getRules().getOffset(m.at()).equals(ZoneOffset.UTC));
        rows.add(row(same ? "UTC, local" : "UTC", m -> m.prefix() + sheet.grain().utc(m.at())));
        if (!same) {
            rows.add(row("Local", m -> m.prefix() + sheet.grain().local(m.at(), sheet.zone())));
        }
        rows.add(row("Azimuth", m -> Compass.words(m.look().azimuthDeg())));
        rows.add(row("Elevation", m -> degrees(m.look().elevationDeg())));
        rows.add(row("Range", m -> String.format(Locale.ROOT, "%.0f km", m.look().rangeKm())));
        for (Dial dial : sheet.dials()) {
            rows.add(row(dial.verb() + ", kHz", m -> khz(dial.addKhz(m.look().rangeRateKmS()))));
        }
        rows.add(row("Bird", m -> m.light() == Light.LIT ? "lit" : m.light() == Light.SHADED ? "in shadow" : "–"));
        rows.add(row("Sun apart", m -> m.sun().isUp() ? degrees(m.sunSeparationDeg()) : "sun is down"));
        return rows;
    }

    public List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Site", ThingText.of(sheet.found().site()) + squares()));
        facts.add(new Fact("Bird", bird()));
        facts.add(new Fact("Way", way()));
        facts.add(new Fact("Lasts", sheet.grain().words(pass.duration()) + cutSentence()));
        facts.add(new Fact("Peak", degrees(pass.peakElevationDeg()) + " in the " + Compass.wind(pass.tcaAzimuthDeg())
                + ", nearest " + String.format(Locale.ROOT, "%.0f km", pass.minRangeKm())));
        facts.add(new Fact("Sunlit", sunlit()));
        facts.add(new Fact("Sun", sun()));
        facts.add(new Fact("Mask", mask()));
        facts.add(new Fact("Good to", goodTo()));
        if (!sheet.dials().isEmpty()) {
            facts.add(new Fact("Dial", dials()));
        }
        facts.add(new Fact("Worked by", workers()));
        return facts;
    }

    /** The look at an instant, in one line. */
    public String look(Instant at) {
        ArcPoint look = sheet.arc().at(at);
        return sheet.grain().utc(at) + " UTC, azimuth " + Compass.words(look.azimuthDeg()) + ", elevation "
                + degrees(look.elevationDeg()) + String.format(Locale.ROOT, ", %.0f km, ", look.rangeKm())
                + sheet.arc().light(at).words() + sheet.dials().stream().map(dial -> ", "
                + dial.direction().word().toLowerCase(Locale.ROOT) + " " + khz(dial.addKhz(look.rangeRateKmS()))
                + " kHz").collect(Collectors.joining());
    }

    /** The sheet for somebody who does not see it. */
    public String spoken() {
        return title() + ". " + sheet.moments().stream().map(m -> m.word() + " " + m.prefix() + sheet.grain().utc(m.at())
                + " UTC at azimuth " + Compass.words(m.look().azimuthDeg()) + ", elevation "
                + degrees(m.look().elevationDeg())).collect(Collectors.joining("; ")) + ".";
    }

    /** {@code AOS 10:17 18° N, peak 49°, LOS 10:29 200° S}: where there is no room for more. */
    public String glance() {
        return sheet.aos().word() + " " + end(sheet.aos()) + ", peak " + degrees(pass.peakElevationDeg()) + ", "
                + sheet.los().word() + " " + end(sheet.los());
    }

    private String end(Moment moment) {
        return moment.prefix() + sheet.grain().utc(moment.at()) + "Z " + Compass.words(moment.look().azimuthDeg());
    }

    /** Half a minus is no shift. */
    static String khz(double khz) {
        double shown = Math.round(khz * 10) / 10.0;
        return shown == 0 ? "0.0" : String.format(Locale.ROOT, "%+.1f", shown).replace('-', '−');
    }

    private MomentRow row(String heading, Function<Moment, String> cell) {
        return new MomentRow(heading, sheet.moments().stream().map(cell).toList());
    }

    private static String degrees(double degrees) {
        long whole = Math.round(degrees);
        return whole < 0 ? "−" + -whole + "°" : whole + "°";
    }

    private String squares() {
        return sheet.found().site().getSquares().isEmpty() ? ""
                : " (" + String.join(" ", sheet.found().site().getSquares()) + ")";
    }

    private String bird() {
        BirdState state = sheet.found().bird().getState();
        return ThingText.of(sheet.found().bird()) + ", state " + state.getLiteral()
                + (sheet.found().bird().isLitOnly() ? ", works in sunlight only" : "");
    }

    private String way() {
        return (pass.ascending() ? "Ascending: moves north at TCA" : "Descending: moves south at TCA") + ", from "
                + Compass.wind(pass.aosAzimuthDeg()) + " by " + Compass.wind(pass.tcaAzimuthDeg()) + " to "
                + Compass.wind(pass.losAzimuthDeg());
    }

    private String cutSentence() {
        return pass.isWhole() ? "" : " in the time searched; the pass itself is longer";
    }

    private String sunlit() {
        List<Window> lit = sheet.lit();
        if (lit.isEmpty()) {
            return "never during the pass: in the Earth's shadow";
        }
        if (lit.size() == 1 && lit.get(0).duration().plusMillis(10).compareTo(pass.duration()) >= 0) {
            return "all of the pass";
        }
        return lit.stream().map(w -> sheet.grain().utc(w.start()) + "–" + sheet.grain().utc(w.end()))
                .collect(Collectors.joining(", ")) + " UTC; half-shadow counts as shadow";
    }

    private String sun() {
        SunSeen sun = sheet.tca().sun();
        if (!sun.isUp()) {
            return "below the horizon";
        }
        String where = (sun.elevationDeg() < 0.5 ? "at the horizon in the " : degrees(sun.elevationDeg()) + " high in the ")
                + Compass.wind(sun.azimuthDeg())
                + " (" + Compass.whole(sun.azimuthDeg()) + "°) at TCA" + (sheet.isSunHidden() ? ", behind the mask" : "");
        return where + sheet.nearestSun().map(near -> "; nearest to the bird " + degrees(near.separationDeg()) + " at "
                + sheet.grain().utc(near.look().at()) + " UTC"
                + (near.separationDeg() < NEAR_SUN_DEG ? ". Do not look into the sun while pointing" : "")).orElse("");
    }

    private String mask() {
        if (!sheet.hasMask()) {
            return "none taken at this site: a level horizon at 0° is assumed";
        }
        return "as surveyed, " + degrees(sheet.horizon().lowestDeg()) + " to "
                + degrees(sheet.horizon().highestDeg()) + ", drawn as the skyline";
    }

    private String goodTo() {
        double days = Math.abs(sheet.error().age().toMinutes() / 1440.0);
        String side = sheet.error().age().isNegative() ? " after" : " before";
        return String.format(Locale.ROOT, "±%s and no finer, an estimate: the element set is from %.1f days%s TCA."
                + " Times are rounded to %s.", seconds(sheet.error().timeErrorS()), days, side,
                seconds(sheet.grain().step().toSeconds()))
                + sheet.orientationNotice().map(notice -> " " + notice).orElse("");
    }

    private static String seconds(double seconds) {
        return seconds < 9.5 ? String.format(Locale.ROOT, seconds == Math.rint(seconds) ? "%.0f s" : "%.1f s", seconds)
                : seconds < 120 ? Math.round(seconds) + " s" : Math.round(seconds / 60) + " min";
    }

    private String dials() {
        return "add to the nominal frequency what the table says. " + sheet.dials().stream()
                .map(dial -> dial.verb() + " MHz is the " + dial.which() + ", off by " + off(sheet.dialErrorKhz(dial)))
                .collect(Collectors.joining("; ")) + " where it changes fastest, by the error in time";
    }

    private static String off(double khz) {
        return khz < 0.05 ? "less than 0.1 kHz" : String.format(Locale.ROOT, "%.1f kHz", khz);
    }

    private String workers() {
        return sheet.workers().isEmpty() ? "nobody yet" : sheet.workers().stream()
                .map(worker -> "team " + ThingText.of(worker.stop().getTeam()) + ", "
                        + Times.utcClock(worker.turn().getStart()) + "–" + Times.utcClock(worker.turn().getEnd()))
                .collect(Collectors.joining("; "));
    }
}
