package org.straddle.plan.bound;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a route is paid for the amount by which it serves one group with one square: the dual values of the
 * {@link Cut}s, each along its curve. Grows ever slower.
 */
final class PayCurve {

    static final PayCurve NOTHING = new PayCurve(List.of());

    /** A cut at its price. */
    record Priced(Cut cut, double price) {
    }

    private final List<Priced> all;
    // By cut, the ones for small amounts first; sums of what lies before and of what does not.
    private final double[] at;
    private final double[] slopeFrom;
    private final double[] priceBefore;
    private final double[] constantBefore;

    PayCurve(List<Priced> priced) {
        all = priced.stream().filter(one -> one.price > 0)
                .sorted((a, b) -> Double.compare(a.cut.at(), b.cut.at())).toList();
        int count = all.size();
        at = new double[count];
        slopeFrom = new double[count + 1];
        priceBefore = new double[count + 1];
        constantBefore = new double[count + 1];
        for (int i = 0; i < count; i++) {
            at[i] = all.get(i).cut.at();
            priceBefore[i + 1] = priceBefore[i] + all.get(i).price;
            constantBefore[i + 1] = constantBefore[i] + all.get(i).price * all.get(i).cut.constant();
        }
        for (int i = count - 1; i >= 0; i--) {
            slopeFrom[i] = slopeFrom[i + 1] + all.get(i).price * all.get(i).cut.slope();
        }
    }

    /** All in one: what is paid for the same amount by each of them. */
    static PayCurve sum(List<PayCurve> curves) {
        return new PayCurve(curves.stream().flatMap(curve -> curve.all.stream()).toList());
    }

    /** A curve between this and another. @param share of the other, 0 to 1 */
    PayCurve toward(PayCurve other, double share) {
        Map<Cut, Double> prices = new LinkedHashMap<>();
        all.forEach(one -> prices.merge(one.cut, (1 - share) * one.price, Double::sum));
        other.all.forEach(one -> prices.merge(one.cut, share * one.price, Double::sum));
        return new PayCurve(prices.entrySet().stream().map(one -> new Priced(one.getKey(), one.getValue())).toList());
    }

    List<Priced> priced() {
        return all;
    }

    boolean paysNothing() {
        return all.isEmpty();
    }

    /** @param amount not negative, may be infinite */
    double of(double amount) {
        int i = 0;
        while (i < at.length && at[i] < amount) {
            i++;
        }
        double linear = slopeFrom[i] > 0 ? amount * slopeFrom[i] : 0;
        return i == 0 ? linear : linear - Math.expm1(-amount) * priceBefore[i] - constantBefore[i];
    }

    /** What a little more is paid, per unit of it. */
    double slope(double amount) {
        int i = 0;
        while (i < at.length && at[i] < amount) {
            i++;
        }
        return slopeFrom[i] + (i == 0 ? 0 : Math.exp(-amount) * priceBefore[i]);
    }

    /** What no amount is paid more than. */
    double most() {
        return of(Double.POSITIVE_INFINITY);
    }
}
