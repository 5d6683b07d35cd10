package org.straddle.plan.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.straddle.plan.problem.Chance;
import org.straddle.plan.problem.ChanceTable;
import org.straddle.plan.problem.StationTimes;

/**
 * What a team can be paid for being at one site at given prices: a <em>visit</em>, from one chance to another. Which of those
 * between it works is chosen here, and whether it leaves meanwhile and returns, so that others may hold the squares.
 *
 * <p>What a visit is paid grows ever slower with the amounts it serves, which no way of adding up turn by turn can see. So it
 * is bounded from above in several ways, each of them a sum over turns: like a {@link Cut} it touches what is paid at some
 * amounts, the <em>touching point</em>. For each the best choice of turns is found exactly (weighted interval scheduling), and
 * the lowest of these bounds counts. Touching points are laid along the mean of all chances, and then where the choices
 * that a bound relies on really lie.
 */
final class StopPay {

    private static final int NONE = -1;

    /** Turns of a mean kind, of which the first touching points are made. */
    private static final double[] TURNS = { 0, 0.5, 1, 1.5, 2.5, 4, 6, 8.5, 12, 16, 22, 30 };

    /** Touching points that are learnt; the oldest goes. */
    private static final int MOST_LEARNT = 8;

    private final ChanceTable table;
    private final StationTimes times;
    private final int groups;
    /** Chances of the site by start. */
    private final int[] chances;
    /** Positions in {@code chances} by end; and for each position how many by end are over before it. */
    private final int[] byEnd;
    private final int[] overBefore;
    private final int[] leftBefore;
    private final List<double[]> points = new ArrayList<>();
    private final int fixedPoints;
    private int learnt;
    private final List<double[]> fresh = new ArrayList<>();

    // At the present prices.
    private PayCurve[] pay;
    private double[] constants;
    private double[][] worth;

    StopPay(ChanceTable table, StationTimes times, int site, int groups) {
        this.table = table;
        this.times = times;
        this.groups = groups;
        int first = table.firstRank(site);
        int count = table.firstRank(site + 1) - first;
        Integer[] order = new Integer[count];
        Arrays.setAll(order, i -> table.atRank(first + i));
        Arrays.sort(order);
        chances = Arrays.stream(order).mapToInt(Integer::intValue).toArray();
        byEnd = new int[count];
        for (int i = 0; i < count; i++) {
            byEnd[i] = Arrays.binarySearch(chances, table.atRank(first + i));
        }
        overBefore = new int[count];
        leftBefore = new int[count];
        for (int i = 0; i < count; i++) {
            overBefore[i] = table.rankEndedBy(site, table.chance(chances[i]).start() - times.turnGap()) - first;
            leftBefore[i] = table.rankDepartedBy(site, table.arrive(chances[i])) - first;
        }
        double[] mean = new double[groups];
        for (int c : chances) {
            for (int g = 0; g < groups; g++) {
                mean[g] += Math.min(table.chance(c).service().amount(g), 9) / count;
            }
        }
        for (double turns : TURNS) {
            points.add(Arrays.stream(mean).map(amount -> turns * amount).toArray());
        }
        double[] all = new double[groups];
        Arrays.fill(all, Double.POSITIVE_INFINITY);
        points.add(all);
        fixedPoints = points.size();
    }

    /** @param pay by group: what the site pays, at new prices */
    void setPay(PayCurve[] pay) {
        this.pay = pay;
        takeIn();
        worth = null;
    }

    /** The same prices, but some squares are paid elsewhere. */
    void setOther(PayCurve[] pay) {
        this.pay = pay;
        worth = null;
    }

    private void prepare() {
        if (worth == null) {
            worth = new double[points.size()][chances.length];
            constants = new double[points.size()];
            for (int k = 0; k < points.size(); k++) {
                prepare(k);
            }
        }
    }

    private void prepare(int k) {
        for (int g = 0; g < groups; g++) {
            double at = points.get(k)[g];
            double slope = pay[g].slope(at);
            double constant = pay[g].of(at) - (slope > 0 ? slope * at : 0);
            constants[k] += constant;
            for (int i = 0; i < chances.length; i++) {
                double amount = table.chance(chances[i]).service().amount(g);
                if (amount > 0) {
                    worth[k][i] += amount <= at ? slope > 0 ? slope * amount : 0 : pay[g].of(amount) - constant;
                }
            }
        }
    }

    /** How often it learnt where to touch. */
    int learnt() {
        return learnt;
    }

    /** Position of a chance among those of the site. */
    int position(int chance) {
        return Arrays.binarySearch(chances, chance);
    }

    int chance(int position) {
        return chances[position];
    }

    int size() {
        return chances.length;
    }

    /**
     * Bounds for all visits that begin with one chance.
     *
     * @param value    by position less that of the first: what a visit that ends there is worth at most, its turns paid for;
     *                 negative infinity where none can end
     * @param costOnly the same without anything that the turns are paid
     */
    record Row(double[] value, double[] costOnly) {
    }

    /**
     * What a day makes of the chances, each by chance.
     *
     * @param interval stays lie within one; negative where a chance cannot be worked
     * @param cost     of a turn
     * @param heldAtArrival   what holding the squares costs up to the arrival for it
     * @param heldAtDeparture and up to the departure after it
     */
    record Terms(int[] interval, double[] cost, double[] heldAtArrival, double[] heldAtDeparture) {
    }

    /**
     * @param first  position of the first chance
     * @param latest chances that start later are not looked at
     */
    Row row(int first, Terms terms, int latest) {
        prepare();
        int end = first;
        while (end < chances.length && table.chance(chances[end]).start() <= latest) {
            end++;
        }
        double[] lowest = new double[end - first];
        Arrays.fill(lowest, Double.POSITIVE_INFINITY);
        double[] costOnly = null;
        double[] value = new double[end - first];
        for (int k = 0; k < points.size(); k++) {
            fill(k, first, end, terms, value, null);
            for (int i = 0; i < value.length; i++) {
                lowest[i] = Math.min(lowest[i], constants[k] + value[i]);
            }
            if (k == fixedPoints - 1) {
                costOnly = value.clone();
            }
        }
        return new Row(lowest, costOnly);
    }

    /**
     * Best sums of turns from the first to each position; where asked, the turn before each as well. A turn follows one in
     * the same stay, or one after which the team left; then it need not hold the squares in between.
     */
    private void fill(int k, int first, int end, Terms terms, double[] value, int[] before) {
        Arrays.fill(value, Double.NEGATIVE_INFINITY);
        double best = Double.NEGATIVE_INFINITY;
        int bestAt = NONE;
        double bestLeft = Double.NEGATIVE_INFINITY;
        int bestLeftAt = NONE;
        int over = overBefore[first];
        int left = leftBefore[first];
        for (int i = first; i < end; i++) {
            int c = chances[i];
            for (; over < overBefore[i]; over++) {
                int ended = byEnd[over];
                if (ended >= first && ended < i && value[ended - first] > Double.NEGATIVE_INFINITY
                        && (bestAt == NONE || terms.interval[chances[ended]] != terms.interval[chances[bestAt]]
                                || value[ended - first] > best)) {
                    best = value[ended - first];
                    bestAt = ended;
                }
            }
            for (; left < leftBefore[i]; left++) {
                int gone = byEnd[left];
                if (gone >= first && gone < i && value[gone - first] - terms.heldAtDeparture[chances[gone]] > bestLeft) {
                    bestLeft = value[gone - first] - terms.heldAtDeparture[chances[gone]];
                    bestLeftAt = gone;
                }
            }
            if (terms.interval[c] >= 0) {
                boolean stays = bestAt != NONE && terms.interval[chances[bestAt]] == terms.interval[c];
                double after = i == first ? 0 : stays ? best : Double.NEGATIVE_INFINITY;
                int from = i == first ? NONE : bestAt;
                if (i > first && bestLeft + terms.heldAtArrival[c] > after) {
                    after = bestLeft + terms.heldAtArrival[c];
                    from = bestLeftAt;
                }
                value[i - first] = worth[k][i] - terms.cost[c] + after;
                if (before != null) {
                    before[i - first] = from;
                }
            }
        }
    }

    /** Good turns of a visit from one chance to another, by positions; the bound touches there from now on. */
    List<Chance> turns(int first, int last, Terms terms) {
        prepare();
        double[] value = new double[last + 1 - first];
        int[] before = new int[value.length];
        double best = Double.NEGATIVE_INFINITY;
        List<Chance> turns = List.of();
        double[] point = null;
        for (int k = 0; k < points.size(); k++) {
            fill(k, first, last + 1, terms, value, before);
            if (value[last - first] == Double.NEGATIVE_INFINITY) {
                continue;
            }
            List<Chance> chosen = new ArrayList<>();
            double besides = value[last - first];
            for (int i = last; i != NONE; i = before[i - first]) {
                chosen.add(table.chance(chances[i]));
                besides -= worth[k][i];
            }
            double[] amount = amounts(chosen);
            double gain = paid(amount, besides);
            if (gain > best) {
                best = gain;
                turns = chosen;
                point = amount;
            }
        }
        learn(point);
        Collections.reverse(turns);
        return turns;
    }

    /** What chances do for each group. */
    private double[] amounts(List<Chance> chosen) {
        double[] amount = new double[groups];
        for (Chance chance : chosen) {
            for (int g = 0; g < groups; g++) {
                amount[g] += chance.service().amount(g);
            }
        }
        return amount;
    }

    /** What the groups pay for it, on top of what else comes in. */
    private double paid(double[] amount, double besides) {
        double sum = besides;
        for (int g = 0; g < groups; g++) {
            sum += pay[g].of(amount[g]);
        }
        return sum;
    }

    /** From the next prices on, so that all that is asked at the same prices touches at the same points. */
    private void learn(double[] point) {
        if (point != null && points.stream().noneMatch(known -> Arrays.equals(known, point))
                && fresh.stream().noneMatch(known -> Arrays.equals(known, point))) {
            learnt++;
            fresh.add(point);
        }
    }

    private void takeIn() {
        for (double[] point : fresh) {
            if (points.size() == fixedPoints + MOST_LEARNT) {
                points.remove(fixedPoints);
            }
            points.add(point);
        }
        fresh.clear();
    }

    /**
     * The best turns among chances of a stop whose times are fixed, of which none is needed.
     *
     * @param possible positions
     * @param value    no choice is worth more
     */
    record Choice(List<Chance> turns, double value) {
    }

    Choice choice(List<Integer> possible, double[] cost) {
        prepare();
        double lowest = Double.POSITIVE_INFINITY;
        double best = 0;
        List<Chance> turns = List.of();
        for (int k = 0; k < points.size(); k++) {
            double[] value = new double[possible.size()];
            int[] before = new int[possible.size()];
            int last = NONE;
            for (int i = 0; i < value.length; i++) {
                int at = possible.get(i);
                before[i] = NONE;
                for (int j = 0; j < i; j++) {
                    if (times.follows(table.chance(chances[possible.get(j)]), table.chance(chances[at]))
                            && value[j] > (before[i] == NONE ? 0 : value[before[i]])) {
                        before[i] = j;
                    }
                }
                value[i] = worth[k][at] - cost[chances[at]] + (before[i] == NONE ? 0 : value[before[i]]);
                last = value[i] > (last == NONE ? 0 : value[last]) ? i : last;
            }
            lowest = Math.min(lowest, constants[k] + (last == NONE ? 0 : value[last]));
            List<Chance> chosen = new ArrayList<>();
            double besides = 0;
            for (int i = last; i != NONE; i = before[i]) {
                chosen.add(table.chance(chances[possible.get(i)]));
                besides -= cost[chances[possible.get(i)]];
            }
            double gain = paid(amounts(chosen), besides);
            if (gain > best) {
                best = gain;
                turns = chosen;
            }
        }
        Collections.reverse(turns);
        return new Choice(turns, Math.max(0, lowest));
    }
}
