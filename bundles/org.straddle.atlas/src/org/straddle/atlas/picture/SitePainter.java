package org.straddle.atlas.picture;

import java.util.ArrayList;
import java.util.List;

import org.straddle.atlas.scene.BaseSpot;
import org.straddle.atlas.scene.EventScene;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.drawing.Face;
import org.straddle.drawing.Frame;
import org.straddle.drawing.Lettering;
import org.straddle.drawing.Mark;
import org.straddle.drawing.Words;

/** Sites and bases, with team marks, findings and names. */
final class SitePainter {

    /** Farther out than this the drawings are smaller, metres to the pixel. */
    private static final double SMALL_FROM = 1500;
    /** Farther out than this the sites of an event lie on one another, and only their places count. */
    private static final double TINY_FROM = 5000;

    private final Tracing tracing;
    private final Shown shown;
    private final Crowd crowd;
    private final Lettering lettering;
    private final List<Mark> marks = new ArrayList<>();
    private final List<SiteSpot> seen = new ArrayList<>();
    private final List<BaseSpot> seenBases = new ArrayList<>();

    SitePainter(Tracing tracing, EventScene scene, Shown shown, Crowd crowd, Lettering lettering) {
        this.tracing = tracing;
        this.shown = shown;
        this.crowd = crowd;
        this.lettering = lettering;
        Frame around = tracing.frame().grown(20);
        if (shown.shows(Part.SITES)) {
            scene.sites().stream().filter(site -> around.contains(x(site), y(site))).forEach(seen::add);
        }
        if (shown.shows(Part.BASES)) {
            scene.bases().stream().filter(base -> around.contains(tracing.sight().pxX(base.at()),
                    tracing.sight().pxY(base.at()))).forEach(seenBases::add);
        }
    }

    static double size(Sight sight) {
        return sight.metresPerPx() > TINY_FROM ? 0.4 : sight.metresPerPx() > SMALL_FROM ? 0.7 : 1;
    }

    /** Takes the room of all drawings before any name does. */
    void takeRoom() {
        seen.forEach(site -> {
            crowd.take(box(site));
            if (showsTeams(site)) {
                crowd.take(teamRoom(site));
            }
        });
        seenBases.forEach(base -> crowd.take(new Frame(tracing.sight().pxX(base.at()) - 7,
                tracing.sight().pxY(base.at()) - 8, tracing.sight().pxX(base.at()) + 7, tracing.sight().pxY(base.at()) + 7)));
    }

    List<Mark> paint() {
        for (BaseSpot base : seenBases) {
            double x = tracing.sight().pxX(base.at());
            double y = tracing.sight().pxY(base.at());
            marks.addAll(Glyphs.base(x, y));
            name(base.name(), new Frame(x - 7, y - 8, x + 7, y + 7), Face.SMALL);
        }
        for (SiteSpot site : seen) {
            marks.addAll(Glyphs.site(site.kind(), x(site), y(site), size(tracing.sight())));
            Frame box = box(site);
            if (showsTeams(site)) {
                Frame room = teamRoom(site);
                marks.addAll(Glyphs.teams(site.teams(), room.left(), room.top()));
            }
            if (!tiny() && shown.shows(Part.FINDINGS)) {
                marks.addAll(Glyphs.attention(site.attention(), box.right() + 2, box.top() - 1));
            }
        }
        for (SiteSpot site : seen) {
            name(site.name(), box(site), Face.PLAIN);
        }
        return marks;
    }

    private boolean tiny() {
        return tracing.sight().metresPerPx() > TINY_FROM;
    }

    private boolean showsTeams(SiteSpot site) {
        return !tiny() && shown.shows(Part.TEAMS) && !site.teams().isEmpty();
    }

    private Frame teamRoom(SiteSpot site) {
        double width = Glyphs.teamsWidth(site.teams().size());
        double top = box(site).bottom() + 3;
        return new Frame(x(site) - width / 2, top, x(site) + width / 2, top + Glyphs.teamsHeight());
    }

    /** Beside the drawing, or above or below it, where there is room; else not at all. */
    private void name(String name, Frame box, Face face) {
        if (!shown.shows(Part.NAMES)) {
            return;
        }
        double width = lettering.width(name, face);
        double height = lettering.height(face);
        double middleX = (box.left() + box.right()) / 2;
        double middleY = (box.top() + box.bottom()) / 2;
        double[][] places = {{box.right() + 8 + width / 2, middleY}, {box.left() - 4 - width / 2, middleY},
            {middleX, box.top() - 4 - height / 2}, {middleX, box.bottom() + 3 + height / 2},
            {middleX, box.bottom() + Glyphs.teamsHeight() + 5 + height / 2}};
        for (double[] place : places) {
            if (crowd.claim(new Frame(place[0] - width / 2, place[1] - height / 2, place[0] + width / 2,
                    place[1] + height / 2))) {
                marks.add(new Words(name, (float) place[0], (float) place[1], face, Palette.INK, Palette.PAPER));
                return;
            }
        }
    }

    private Frame box(SiteSpot site) {
        return Glyphs.box(site.kind(), x(site), y(site), size(tracing.sight()));
    }

    private double x(SiteSpot site) {
        return tracing.sight().pxX(site.at());
    }

    private double y(SiteSpot site) {
        return tracing.sight().pxY(site.at());
    }
}
