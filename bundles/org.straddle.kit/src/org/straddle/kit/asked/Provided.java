package org.straddle.kit.asked;

import java.util.List;

import org.straddle.model.KitItem;
import org.straddle.model.SafetyUse;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;

/**
 * How a packing list meets what the plan asks for.
 *
 * @param items    what is packed for it
 * @param enough   pieces, metres or litres that do
 * @param doubtful vests whose class is lower or not known, tape and water of which nobody knows how much there is, pieces
 */
public record Provided(Asked asked, List<KitItem> items, double enough, int doubtful) {

    private static final Catalogue TEXTS = Catalogue.of(Provided.class);

    public Provided {
        items = List.copyOf(items);
    }

    static Provided of(Asked asked, List<KitItem> carried) {
        List<KitItem> items = carried.stream().filter(item -> item.getCount() > 0 && SafetyWords.useOf(item) == asked.use()).toList();
        double enough = 0;
        int doubtful = 0;
        for (KitItem item : items) {
            double each = each(asked, item);
            enough += item.getCount() * each;
            doubtful += each > 0 ? 0 : item.getCount();
        }
        return new Provided(asked, items, enough, doubtful);
    }

    private static double each(Asked asked, KitItem item) {
        double amount = switch (asked.use()) {
            case VEST -> item.getVestClass() >= asked.vestClass() ? 1 : 0;
            case TAPE -> item.getTapeM();
            case WATER -> item.getWaterLitres();
            case CONE, FLAG_POLE, LIFE_VEST, FIRST_AID, NONE -> 1;
        };
        return amount > 0 && Double.isFinite(amount) ? amount : 0;
    }

    public boolean isMet() {
        return enough >= asked.amount();
    }

    /** What is missing, in pieces, metres or litres. */
    public double missing() {
        return Math.max(0, asked.amount() - enough);
    }

    /** {@code 3 vests of class 3: packed are 1. The class of “vests” is lower or not written down.} */
    public String sentence() {
        return TEXTS.text(isMet() ? "provided.met" : doubtful > 0 ? "provided.doubtful" : enough > 0 ? "provided.few" : "provided.none",
                "title", asked.title(), "use", asked.use().name(), "enough", enough, "items", items.stream().map(Naming::name).toList());
    }
}
