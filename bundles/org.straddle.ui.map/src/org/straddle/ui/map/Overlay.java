package org.straddle.ui.map;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.straddle.atlas.mark.PlaceWords;
import org.straddle.atlas.picture.Glyphs;
import org.straddle.atlas.picture.Palette;
import org.straddle.atlas.picture.ScaleBar;
import org.straddle.atlas.picture.Sight;
import org.straddle.atlas.plane.Plane;
import org.straddle.atlas.plane.PlanePoint;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.drawing.Face;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Stroke;
import org.straddle.drawing.Words;
import org.straddle.grid.Square;
import org.straddle.ui.drawing.GcPen;
import org.straddle.words.Catalogue;

/** What is drawn anew in each frame over the map: what is selected, what is being placed, scale, words in the corner. */
final class Overlay {

    private static final Catalogue TEXTS = Catalogue.of(Overlay.class);

    private static final double INSET = 10;
    private static final Stroke HALO = Stroke.solid(Palette.CHOSEN, 4);
    private static final Stroke EDGE = Stroke.solid(Palette.INK, 1.6);

    private final MapCanvas map;
    private String ringsOf = "";
    private List<double[]> rings = List.of();

    Overlay(MapCanvas map) {
        this.map = map;
    }

    void paint(GC gc) {
        GcPen pen = new GcPen(gc, map.letters());
        Sight sight = map.sight();
        List<Mark> marks = new ArrayList<>();
        map.found().paint(marks);
        map.selectedSite().ifPresent(site -> selected(site, marks));
        map.placing().ifPresent(placing -> placing(placing, marks));
        Plane plane = map.plane().orElseThrow();
        marks.addAll(ScaleBar.of(sight, plane, map.letters(), INSET, sight.height() - INSET));
        if (!map.note().isEmpty()) {
            note(map.note(), marks);
        }
        marks.forEach(mark -> mark.draw(pen));
        if (map.control().isFocusControl()) {
            gc.setForeground(map.control().getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION));
            gc.setLineWidth(2);
            gc.setLineStyle(SWT.LINE_SOLID);
            gc.drawRectangle(1, 1, sight.width() - 2, sight.height() - 2);
        }
    }

    /** Its squares in bold, and a halo around it unless it is being moved. */
    private void selected(SiteSpot site, List<Mark> marks) {
        Sight sight = map.sight();
        for (double[] ring : rings(site)) {
            double[] cut = new Frame(-20, -20, sight.width() + 20.0, sight.height() + 20.0).cutRing(px(ring));
            if (cut.length >= 8) {
                float[] drawn = new float[cut.length];
                for (int i = 0; i < cut.length; i++) {
                    drawn[i] = (float) cut[i];
                }
                marks.add(new Mark.Line(List.of(drawn), Stroke.solid(Palette.INK, 2.4)));
            }
        }
        if (map.placing().isPresent()) {
            return;
        }
        double x = sight.pxX(site.at());
        double y = sight.pxY(site.at());
        marks.add(new Mark.Line(List.of(Glyphs.box(site.kind(), x, y, 1).grown(5).ring()), Stroke.solid(Palette.INK, 6)));
        marks.add(new Mark.Line(List.of(Glyphs.box(site.kind(), x, y, 1).grown(5).ring()), HALO));
        marks.addAll(Glyphs.site(site.kind(), x, y, 1));
        double width = map.letters().width(site.name(), Face.STRONG);
        marks.add(new Words(site.name(), (float) (x + 20 + width / 2), (float) y, Face.STRONG, Palette.INK, Palette.CHOSEN));
    }

    private List<double[]> rings(SiteSpot site) {
        String key = site.id() + site.squares() + System.identityHashCode(map.contents().orElseThrow().grid());
        if (!key.equals(ringsOf)) {
            ringsOf = key;
            rings = new ArrayList<>();
            for (Square square : site.squares()) {
                rings.addAll(map.contents().orElseThrow().grid().ring(square.locator()).parts());
            }
        }
        return rings;
    }

    private double[] px(double[] ring) {
        double[] px = new double[ring.length];
        for (int i = 0; i < ring.length; i += 2) {
            px[i] = map.sight().pxX(ring[i]);
            px[i + 1] = map.sight().pxY(ring[i + 1]);
        }
        return px;
    }

    /** Cross hairs at the exact place, the way from where it was, and the place in words. */
    private void placing(Placing placing, List<Mark> marks) {
        Plane plane = map.plane().orElseThrow();
        PlanePoint at = plane.put(placing.at());
        PlanePoint from = plane.put(placing.from());
        Sight sight = map.sight();
        float x = (float) sight.pxX(at);
        float y = (float) sight.pxY(at);
        if (placing.isMoved() && placing.siteId().isPresent()) {
            marks.add(new Mark.Line(List.of(new float[] {(float) sight.pxX(from), (float) sight.pxY(from), x, y}),
                    new Stroke(Palette.INK, 1.4, Stroke.Dash.DASHED)));
        }
        List<float[]> cross = List.of(new float[] {x - 26, y, x - 5, y}, new float[] {x + 5, y, x + 26, y},
                new float[] {x, y - 26, x, y - 5}, new float[] {x, y + 5, x, y + 26});
        marks.add(new Mark.Line(cross, HALO));
        marks.add(new Mark.Line(cross, EDGE));
        marks.add(new Mark.Line(List.of(new Frame(x - 5, y - 5, x + 5.0, y + 5.0).ring()), EDGE));
        List<String> lines = new ArrayList<>(PlaceWords.lines(placing.at()));
        lines.set(2, lines.get(2) + placing.on().map(on -> TEXTS.text("overlay.on", "on", on)).orElse(""));
        box(lines, x + 34, y + 20, marks);
    }

    /** Lines of text on paper beside a point, kept in the window. */
    private void box(List<String> lines, double left, double top, List<Mark> marks) {
        double width = lines.stream().mapToDouble(line -> map.letters().width(line, Face.PLAIN)).max().orElse(0);
        double lineHeight = map.letters().height(Face.PLAIN) + 1;
        double height = lines.size() * lineHeight;
        double x = Math.max(6, Math.min(left, map.sight().width() - width - 18));
        double y = Math.max(6, Math.min(top, map.sight().height() - height - 14));
        Frame box = new Frame(x, y, x + width + 12, y + height + 8);
        marks.add(new Mark.Fill(List.of(box.ring()), Palette.PAPER, 0.93));
        marks.add(new Mark.Line(List.of(box.ring()), Stroke.solid(Palette.QUIET, 1)));
        for (int i = 0; i < lines.size(); i++) {
            marks.add(new Words(lines.get(i), (float) (x + 6 + map.letters().width(lines.get(i), Face.PLAIN) / 2),
                    (float) (y + 4 + (i + 0.5) * lineHeight), Face.PLAIN, Palette.INK, -1));
        }
    }

    private void note(String words, List<Mark> marks) {
        double width = map.letters().width(words, Face.PLAIN);
        double height = map.letters().height(Face.PLAIN);
        Frame box = new Frame(INSET, INSET, INSET + width + 12, INSET + height + 8);
        marks.add(new Mark.Fill(List.of(box.ring()), Palette.PAPER, 0.9));
        marks.add(new Words(words, (float) (INSET + 6 + width / 2), (float) (INSET + 4 + height / 2), Face.PLAIN, Palette.INK, -1));
    }
}
