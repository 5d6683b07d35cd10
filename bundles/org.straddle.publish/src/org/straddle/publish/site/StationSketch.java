package org.straddle.publish.site;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.straddle.outlook.StationPart;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/** A sketch, north up, of which part stands in which square; not to scale. Its middle is 0, x right and y down. */
final class StationSketch {

    private static final Catalogue TEXTS = Catalogue.of(StationSketch.class);

    private static final float X = 60;
    private static final float Y = 30;

    private StationSketch() {
    }

    /** Where a part is drawn. */
    public record Spot(float x, float y, String square, String part) {
    }

    /** The line or the two lines of the corner: x and y of both ends. */
    static List<float[]> lines(List<StationPart> parts) {
        List<float[]> lines = new ArrayList<>();
        if (parts.stream().anyMatch(part -> part.eastM() != 0)) {
            lines.add(new float[] {0, -2 * Y + 2, 0, 2 * Y - 2});
        }
        if (parts.stream().anyMatch(part -> part.northM() != 0)) {
            lines.add(new float[] {-2 * X + 2, 0, 2 * X - 2, 0});
        }
        return lines;
    }

    static List<Spot> spots(List<StationPart> parts) {
        return parts.stream().map(part -> new Spot((float) Math.signum(part.eastM()) * X, (float) -Math.signum(part.northM()) * Y,
                part.square().name(), part.name() + ", " + TEXTS.text("sketch.away", "metres",
                        FigureText.inCurrent().fixed(1, Math.ceil(part.awayM() * 10) / 10)))).toList();
    }

    static String words(List<StationPart> parts) {
        return spots(parts).stream().map(spot -> spot.square() + ": " + spot.part()).collect(Collectors.joining("; "));
    }
}
