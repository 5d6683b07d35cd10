package org.straddle.kit.asked;

import java.util.Optional;

import org.straddle.grid.Squares;
import org.straddle.grid.Boundary;
import org.straddle.model.Site;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.BoundaryRule;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;

/**
 * What a team lays down where it works on a line or corner: tape through the mark as long as the station, along each line,
 * and cones at the edges of the strip in which the line may lie, one error of the mark to each side (common practice, no
 * source).
 *
 * @param tapeM  along each line, metres
 * @param tapes  one on a line, two on a corner
 * @param asideM how far from the tape the cones stand: R95 of the mark, metres
 */
record LineMark(Site site, Boundary boundary, double tapeM, int tapes, double asideM) {

    private static final Catalogue TEXTS = Catalogue.of(LineMark.class);

    /** At both ends of the strip on both sides of a line, or at the corners of the field round a corner. */
    static final int CONES = 4;

    /** Empty where one square is claimed. */
    static Optional<LineMark> of(Outlook outlook, Site site) {
        return Squares.meetingPlace(outlook.squares(site)).map(boundary -> new LineMark(site, boundary,
                Math.ceil(outlook.policies().stationSpanM()), outlook.squares(site).size() == 2 ? 1 : 2,
                Math.max(0, Double.isFinite(site.getMarkErrorM()) ? site.getMarkErrorM() : 0)));
    }

    double tape() {
        return tapes * tapeM;
    }

    /** What to lay down, how wide, and where the parts of the station then stand. */
    String sentence(Outlook outlook) {
        return TEXTS.text("lineMark.lay", "site", Naming.name(site), "boundary", boundary, "tapes", tapes, "tape", tapeM,
                "aside", Math.ceil(asideM * 10) / 10, "wide", Math.ceil(asideM * 20) / 10, "where",
                BoundaryRule.of(outlook, site).map(BoundaryRule::where).orElse(""));
    }
}
