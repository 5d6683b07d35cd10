package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

import org.straddle.atlas.scene.Attention;
import org.straddle.atlas.scene.DriveLine;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.TeamMark;
import org.straddle.words.Catalogue;

/** What the drawings of a map mean: small samples with words. */
public final class Legend {

    private static final Catalogue TEXTS = Catalogue.of(Legend.class);

    /** Size of a sample, pixels. */
    public static final double WIDTH = 34;
    public static final double HEIGHT = 22;

    private static final double MID_X = WIDTH / 2;
    private static final double MID_Y = HEIGHT / 2;

    /**
     * One thing of the legend.
     *
     * @param sample drawn within {@link #WIDTH} by {@link #HEIGHT} from the point (0, 0)
     */
    public record Entry(List<Mark> sample, String words) {
    }

    private Legend() {
    }

    /** The things that a map has and shows. */
    public static List<Entry> of(MapContents contents, Shown shown) {
        List<Entry> entries = new ArrayList<>();
        if (shown.shows(Part.SITES)) {
            entries.add(site(SiteSpot.Kind.INSIDE, TEXTS.text("legend.inside")));
            entries.add(site(SiteSpot.Kind.WEST_EAST, TEXTS.text("legend.westeast")));
            entries.add(site(SiteSpot.Kind.SOUTH_NORTH, TEXTS.text("legend.southnorth")));
            entries.add(site(SiteSpot.Kind.CORNER, TEXTS.text("legend.corner")));
        }
        if (shown.shows(Part.BASES) && !contents.scene().bases().isEmpty()) {
            entries.add(new Entry(Glyphs.base(MID_X, MID_Y), TEXTS.text("legend.base")));
        }
        if (shown.shows(Part.PLACES) && !contents.places().isEmpty()) {
            entries.add(new Entry(Glyphs.place(MID_X, MID_Y), TEXTS.text("legend.place")));
        }
        if (shown.shows(Part.DRIVES)) {
            TreeMap<Integer, TeamMark> teams = new TreeMap<>();
            contents.scene().drives().stream().map(DriveLine::team).forEach(team -> teams.put(team.number(), team));
            teams.values().forEach(team -> entries.add(new Entry(drive(team), TEXTS.text("legend.drives",
                    "team", team.number()))));
        }
        if (shown.shows(Part.DEMAND) && !contents.scene().demand().isEmpty()) {
            entries.add(new Entry(demand(), TEXTS.text("legend.demand")));
        }
        if (shown.shows(Part.REGIONS) && !contents.scene().regions().isEmpty()) {
            entries.add(new Entry(region(), TEXTS.text("legend.region")));
        }
        if (shown.shows(Part.REACH) && contents.reach().isPresent()) {
            entries.add(new Entry(reach(false), TEXTS.text("legend.reach")));
            entries.add(new Entry(reach(true), TEXTS.text("legend.reachall")));
        }
        if (shown.shows(Part.FINDINGS)) {
            entries.add(new Entry(Glyphs.attention(Attention.BLOCKER, MID_X, MID_Y), TEXTS.text("legend.blocker")));
            entries.add(new Entry(Glyphs.attention(Attention.WARNING, MID_X, MID_Y), TEXTS.text("legend.warning")));
            entries.add(new Entry(Glyphs.attention(Attention.ADVICE, MID_X, MID_Y), TEXTS.text("legend.advice")));
        }
        contents.layers().stream().filter(layer -> shown.showsLayer(layer.layer().name()))
                .flatMap(layer -> layer.byRole().keySet().stream()).distinct()
                .forEach(role -> entries.add(new Entry(layer(role), role.isEmpty() ? TEXTS.text("legend.layers") : role)));
        return entries;
    }

    /** The sample of a part in a list of parts. */
    public static List<Mark> sample(Part part) {
        return switch (part) {
            case BASE_MAP -> ground();
            case FIELDS -> grid(Stroke.solid(Palette.FIELD, 1.8));
            case SQUARES -> grid(Stroke.solid(Palette.SQUARE, 1.4));
            case SUBSQUARES -> grid(Stroke.solid(Palette.SUBSQUARE, 1));
            case DEMAND -> demand();
            case REGIONS -> region();
            case REACH -> reach(false);
            case DRIVES -> drive(TeamMark.of(1));
            case BASES -> Glyphs.base(MID_X, MID_Y);
            case SITES -> Glyphs.site(SiteSpot.Kind.CORNER, MID_X, MID_Y, 0.9);
            case TEAMS -> Glyphs.team(TeamMark.of(2), MID_X - 7, MID_Y - 6);
            case FINDINGS -> Glyphs.attention(Attention.WARNING, MID_X, MID_Y);
            case PLACES -> Glyphs.place(MID_X, MID_Y);
            case NAMES -> List.of(new Mark.Line(List.of(Glyphs.line(7, MID_Y, 27, MID_Y)), Stroke.solid(Palette.INK, 1)),
                    new Mark.Fill(List.of(Glyphs.round(7, MID_Y, 2.5)), Palette.INK, 1));
        };
    }

    /** The sample of a role in a list of layers. */
    public static List<Mark> layer(String role) {
        return List.of(new Mark.Line(List.of(Glyphs.line(3, MID_Y + 4, 12, MID_Y - 3, 22, MID_Y + 2, 31, MID_Y - 4)),
                LayerPainter.stroke(role)));
    }

    private static Entry site(SiteSpot.Kind kind, String words) {
        return new Entry(Glyphs.site(kind, MID_X, MID_Y, 0.9), words);
    }

    private static List<Mark> drive(TeamMark team) {
        return List.of(new Mark.Line(List.of(Glyphs.line(2, MID_Y, 32, MID_Y)), DrivePainter.stroke(team)),
                new Mark.Fill(List.of(Glyphs.arrow(26, MID_Y, 1, 0)), team.rgb(), 1),
                new Mark.Line(List.of(Glyphs.arrow(26, MID_Y, 1, 0)), Stroke.solid(Palette.INK, 0.8)));
    }

    private static List<Mark> region() {
        return List.of(new Mark.Line(List.of(new Frame(5, 3, 29, 19).ring()), RegionPainter.LINE));
    }

    private static List<Mark> demand() {
        List<float[]> box = List.of(new Frame(5, 3, 29, 19).ring());
        return List.of(new Mark.Line(Hatching.falling(box, DemandPainter.pitch(0.5), 0), Stroke.solid(Palette.DEMAND, 0.9)),
                new Mark.Line(box, Stroke.solid(Palette.SQUARE, 1)));
    }

    private static List<Mark> reach(boolean throughout) {
        List<float[]> round = List.of(Glyphs.round(MID_X, MID_Y, 8.5));
        return List.of(new Mark.Fill(round, Palette.REACH, throughout ? 0.2 : 0.1),
                new Mark.Line(round, new Stroke(Palette.REACH, 2, throughout ? Stroke.Dash.DASHED : Stroke.Dash.SOLID)));
    }

    private static List<Mark> grid(Stroke stroke) {
        return List.of(new Mark.Line(List.of(Glyphs.line(4, 7, 30, 6), Glyphs.line(4, 16, 30, 15), Glyphs.line(11, 2, 12, 20),
                Glyphs.line(22, 2, 22, 20)), stroke));
    }

    private static List<Mark> ground() {
        float[] land = Glyphs.ring(6, 18, 8, 8, 16, 4, 28, 7, 26, 18);
        return List.of(new Mark.Fill(List.of(new Frame(2, 2, 32, 20).ring()), Palette.SEA, 1),
                new Mark.Fill(List.of(land), Palette.LAND, 1), new Mark.Line(List.of(land), Stroke.solid(Palette.COAST, 1)));
    }
}
