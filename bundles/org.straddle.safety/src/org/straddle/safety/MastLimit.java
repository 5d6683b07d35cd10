package org.straddle.safety;

import java.util.Optional;

import org.straddle.model.Site;
import org.straddle.model.Visit;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/**
 * The one figure for everything upright at a site: the lowest of what the visit allows and of what each of the
 * overhead wires allows. So a computed limit may lower that of the visit, and never raises it.
 *
 * @param heightM highest that anything may reach above the ground, metres; 0 where nothing may be raised
 * @param because where the figure comes from
 */
public record MastLimit(double heightM, String because) {

    private static final Catalogue TEXTS = Catalogue.of(MastLimit.class);

    /** Lower than this nothing useful can be raised, and people themselves come too near. Common practice, no source. */
    private static final double LEAST_USEFUL_M = 2.5;

    /**
     * @param spanM longest distance between two parts of the station, metres
     * @return empty where a visit saw no wires and named no limit
     */
    static Optional<MastLimit> of(Site site, Visit visit, double spanM) {
        Optional<MastLimit> lowest = Optional.empty();
        double own = visit.getMastLimitM();
        if (own > 0 && Double.isFinite(own)) {
            lowest = Optional.of(new MastLimit(own, TEXTS.text("mastLimit.ofVisit")));
        }
        for (WireSighting wires : WireSighting.of(visit)) {
            MastLimit next = of(wires, markErrorM(site, visit), spanM);
            if (lowest.isEmpty() || next.heightM < lowest.get().heightM) {
                lowest = Optional.of(next);
            }
        }
        return lowest;
    }

    /** The station may be as far from the mark as either of them allows; NaN when one of them makes no sense. */
    private static double markErrorM(Site site, Visit visit) {
        return visit.getMark() == null ? site.getMarkErrorM() : Math.max(site.getMarkErrorM(), visit.getMark().getErrorM());
    }

    private static MastLimit of(WireSighting wires, double markErrorM, double spanM) {
        if (wires.distanceM() == 0) {
            return new MastLimit(0, TEXTS.text("mastLimit.nobodyHasMeasured"));
        }
        if (!(markErrorM >= 0) || Double.isInfinite(markErrorM)) {
            return new MastLimit(0, TEXTS.text("mastLimit.nobodyKnowsHow"));
        }
        if (wires.voltage().approachM().isEmpty()) {
            return new MastLimit(0, TEXTS.text("mastLimit.aboveKvOnly"));
        }
        double counted = OverheadWires.countedDistanceM(wires.distanceM(), markErrorM, spanM);
        double highest = Math.floor(OverheadWires.highestM(counted, wires.voltage()) * 10) / 10;
        return new MastLimit(highest < LEAST_USEFUL_M ? 0 : highest, TEXTS.text("mastLimit.fromWires",
                "distanceM", FigureText.inCurrent().atMost(1, wires.distanceM()), "floor", FigureText.inCurrent().atMost(1, Math.floor(counted * 10) / 10),
                "ceil", FigureText.inCurrent().atMost(1, Math.ceil(markErrorM * 10) / 10), "spanM", FigureText.inCurrent().atMost(1, spanM),
                "rule", wires.voltage().rule()));
    }

    /** What it means, with the figure. */
    public String sentence() {
        return heightM > 0
                ? TEXTS.text("mastLimit.nothingUprightHere", "heightM", FigureText.inCurrent().atMost(1, heightM), "because", because)
                : TEXTS.text("mastLimit.raiseNothingHere", "because", because);
    }
}
