package org.straddle.ui.sky.pass;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.straddle.model.BirdState;
import org.straddle.model.naming.Naming;
import org.straddle.sky.Pass;
import org.straddle.sky.Window;
import org.straddle.words.Catalogue;
import org.straddle.words.DateText;
import org.straddle.words.FigureText;
import org.straddle.words.TimeText;

/** What the sheet says in words and figures: the same on the screen, on paper and for a screen reader. */
public final class SheetWords {

    private static final Catalogue TEXTS = Catalogue.of(SheetWords.class);

    /** Nearer to the sun than this, a hand that points at the bird leads the eye to the sun. Our own choice. */
    private static final double NEAR_SUN_DEG = 20;

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
        return TEXTS.text("sheetWords.overUtc", "bird", Naming.name(sheet.found().bird()),
                "site", Naming.name(sheet.found().site()),
                "day", DateText.inCurrent().weekday(TimeText.utc().date(sheet.grain().rounded(pass.aos()))),
                "year", TimeText.utc().date(sheet.grain().rounded(pass.aos())).getYear());
    }

    public List<MomentRow> moments() {
        List<MomentRow> rows = new ArrayList<>();
        boolean same = sheet.moments().stream()
                .allMatch(m -> sheet.zone().getRules().getOffset(m.at()).equals(ZoneOffset.UTC));
        rows.add(row(same ? TEXTS.text("sheetWords.utcLocal") : "UTC", m -> m.prefixed(sheet.grain().utc(m.at()))));
        if (!same) {
            rows.add(row(TEXTS.text("sheetWords.local"), m -> m.prefixed(sheet.grain().local(m.at(), sheet.zone()))));
        }
        rows.add(row(TEXTS.text("sheetWords.azimuth"), m -> Compass.words(m.look().azimuthDeg())));
        rows.add(row(TEXTS.text("sheetWords.elevation"), m -> degrees(m.look().elevationDeg())));
        rows.add(row(TEXTS.text("sheetWords.range"), m -> TEXTS.text("sheetWords.km", "rangeKm", m.look().rangeKm())));
        for (Dial dial : sheet.dials()) {
            rows.add(row(TEXTS.text("sheetWords.khz",
                    "verb", dial.verb()), m -> khz(dial.addKhz(m.look().rangeRateKmS()))));
        }
        rows.add(row(TEXTS.text("sheetWords.bird"), m -> m.light() == Light.LIT ? TEXTS.text("sheetWords.lit") : m.light() == Light.SHADED
                ? TEXTS.text("sheetWords.shadow") : "–"));
        rows.add(row(TEXTS.text("sheetWords.sunApart"), m -> m.sun().isUp() ? degrees(m.sunSeparationDeg())
                : TEXTS.text("sheetWords.sunDown")));
        return rows;
    }

    public List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(TEXTS.text("sheetWords.site"), Naming.name(sheet.found().site()) + squares()));
        facts.add(new Fact(TEXTS.text("sheetWords.bird"), bird()));
        facts.add(new Fact(TEXTS.text("sheetWords.way"), way()));
        facts.add(new Fact(TEXTS.text("sheetWords.lasts"), sheet.grain().words(pass.duration()) + cutSentence()));
        facts.add(new Fact(TEXTS.text("sheetWords.peak"), TEXTS.text("sheetWords.nearest", "degrees", degrees(pass.peakElevationDeg()),
                "wind", Compass.wind(pass.tcaAzimuthDeg()), "kilometres", pass.minRangeKm())));
        facts.add(new Fact(TEXTS.text("sheetWords.sunlit"), sunlit()));
        facts.add(new Fact(TEXTS.text("sheetWords.sun"), sun()));
        facts.add(new Fact(TEXTS.text("sheetWords.mask"), mask()));
        facts.add(new Fact(TEXTS.text("sheetWords.good"), goodTo()));
        if (!sheet.dials().isEmpty()) {
            facts.add(new Fact(TEXTS.text("sheetWords.dial"), dials()));
        }
        facts.add(new Fact(TEXTS.text("sheetWords.worked"), workers()));
        return facts;
    }

    /** The look at an instant, in one line. */
    public String look(Instant at) {
        ArcPoint look = sheet.arc().at(at);
        return TEXTS.text("look", "utc", sheet.grain().utc(at),
                "words", Compass.words(look.azimuthDeg()), "degrees", degrees(look.elevationDeg()),
                "kilometres", look.rangeKm(),
                "light", sheet.arc().light(at).words(),
                "dials", sheet.dials().stream().map(dial -> TEXTS.text("look.dial",
                "downlink", dial.direction() == Dial.Direction.DOWNLINK,
                "khz", khz(dial.addKhz(look.rangeRateKmS())))).collect(Collectors.joining()));
    }

    /** The sheet for somebody who does not see it. */
    public String spoken() {
        return title() + ". " + sheet.moments().stream().map(m -> TEXTS.text("sheetWords.atTime",
                "word", m.word(), "time", m.prefixed(sheet.grain().utc(m.at())),
                "words", Compass.words(m.look().azimuthDeg()),
                "degrees", degrees(m.look().elevationDeg()))).collect(Collectors.joining("; ")) + ".";
    }

    /** {@code AOS 10:17 18° N, peak 49°, LOS 10:29 200° S}: where there is no room for more. */
    public String glance() {
        return TEXTS.text("glance", "word", sheet.aos().word(), "end", end(sheet.aos()),
                "degrees", degrees(pass.peakElevationDeg()), "word2", sheet.los().word(), "end2", end(sheet.los()));
    }

    private String end(Moment moment) {
        return moment.prefixed(sheet.grain().utc(moment.at())) + "Z " + Compass.words(moment.look().azimuthDeg());
    }

    /** Half a minus is no shift. */
    static String khz(double khz) {
        double shown = Math.round(khz * 10) / 10.0;
        return shown == 0 ? "0.0" : ((shown > 0 ? "+" : "") + FigureText.inCurrent().fixed(1, shown)).replace('-', '−');
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
        return TEXTS.text("sheetWords.stateIslitonly", "bird", Naming.name(sheet.found().bird()),
                "state", Naming.of(state), "isLitOnly", sheet.found().bird().isLitOnly());
    }

    private String way() {
        return TEXTS.text("sheetWords.ascendingFrom", "ascending", pass.ascending(),
                "wind", Compass.wind(pass.aosAzimuthDeg()), "wind2", Compass.wind(pass.tcaAzimuthDeg()),
                "wind3", Compass.wind(pass.losAzimuthDeg()));
    }

    private String cutSentence() {
        return pass.isWhole() ? "" : TEXTS.text("sheetWords.timeSearchedPass");
    }

    private String sunlit() {
        List<Window> lit = sheet.lit();
        if (lit.isEmpty()) {
            return TEXTS.text("sheetWords.neverDuringPass");
        }
        if (lit.size() == 1 && lit.get(0).duration().plusMillis(10).compareTo(pass.duration()) >= 0) {
            return TEXTS.text("sheetWords.allPass");
        }
        return TEXTS.text("sheetWords.utcHalfShadow",
                "joining", lit.stream().map(w -> sheet.grain().utc(w.start()) + "–" + sheet.grain().utc(w.end())).collect(Collectors.joining(", ")));
    }

    private String sun() {
        SunSeen sun = sheet.tca().sun();
        if (!sun.isUp()) {
            return TEXTS.text("sheetWords.belowHorizon");
        }
        String where = TEXTS.text("sheetWords.tcaIssunhidden", "degrees", degrees(sun.elevationDeg()), "low", sun.elevationDeg() < 0.5, "wind", Compass.wind(sun.azimuthDeg()),
                "whole", Compass.whole(sun.azimuthDeg()), "isSunHidden", sheet.isSunHidden());
        return where + sheet.nearestSun().map(near -> TEXTS.text("sheetWords.nearestBirdUtc",
                "degrees", degrees(near.separationDeg()), "utc", sheet.grain().utc(near.look().at()),
                "case", near.separationDeg() < NEAR_SUN_DEG)).orElse("");
    }

    private String mask() {
        if (!sheet.hasMask()) {
            return TEXTS.text("sheetWords.noneTakenSite");
        }
        return TEXTS.text("sheetWords.asVisitDrawn", "degrees", degrees(sheet.horizon().lowestDeg()),
                "degrees2", degrees(sheet.horizon().highestDeg()));
    }

    private String goodTo() {
        double days = Math.abs(sheet.error().age().toMinutes() / 1440.0);
        return TEXTS.text("sheetWords.finerEstimateElement", "seconds", seconds(sheet.error().timeErrorS()),
                "days", days, "after", sheet.error().age().isNegative(), "seconds2", seconds(sheet.grain().step().toSeconds()))
                + sheet.orientationNotice().map(notice -> " " + notice).orElse("");
    }

    private static String seconds(double seconds) {
        return seconds < 120 ? TEXTS.text("seconds", "seconds", FigureText.inCurrent().atMost(seconds < 9.5 ? 1 : 0, seconds))
                : TEXTS.text("minutes", "minutes", Math.round(seconds / 60));
    }

    private String dials() {
        return TEXTS.text("sheetWords.addNominalFrequency",
                "joining", sheet.dials().stream().map(dial -> TEXTS.text("sheetWords.mhzOff", "verb", dial.verb(),
                "which", dial.which(), "off", off(sheet.dialErrorKhz(dial)))).collect(Collectors.joining("; ")));
    }

    private static String off(double khz) {
        return khz < 0.05 ? TEXTS.text("sheetWords.lessThanKhz") : TEXTS.text("sheetWords.shift", "khz", khz);
    }

    private String workers() {
        return sheet.workers().isEmpty() ? TEXTS.text("sheetWords.nobodyYet") : sheet.workers().stream()
                .map(worker -> TEXTS.text("sheetWords.team", "team", Naming.name(worker.stop().getTeam()),
                        "times", TimeText.zulu(worker.turn().getStart(), worker.turn().getEnd())))
                .collect(Collectors.joining("; "));
    }
}
