package org.straddle.worth;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;

import org.straddle.grid.Square;

/**
 * A turn as chasers may profit from it, with all parts of the sum. The probability that one of a group who needs a square
 * of the site gets it is
 * {@code bird · happens · usable · callers' share · share in reach · min(1, contacts / callers)}, never above the surest.
 *
 * @param squares  that one contact counts for
 * @param groups   one for each group of chasers, in their order
 * @param minutes  effective minutes, averaged over the callers
 * @param lengthMinutes of the turn by the clock
 * @param contacts that fit into the effective minutes at most
 * @param callers  chasers in reach who need at least one of the squares and turn up
 * @param bird     chance that the bird works, 0 to 1
 * @param happens  chance that the turn happens, 0 to 1
 * @param usable   chance that the site can be used, 0 to 1
 */
public record TurnChance(SortedSet<Square> squares, List<Part> groups, double minutes, double lengthMinutes,
        double contacts, double callers, double bird, double happens, double usable) {

    /**
     * What it is to one group.
     *
     * @param share       part of the group that is in reach
     * @param minutes     effective minutes, averaged over all places of the group
     * @param callers     of this group
     * @param probability that one who needs a square of the site gets it
     */
    public record Part(double share, double minutes, double callers, double probability) {
    }

    public TurnChance {
        squares = new TreeSet<>(squares);
        groups = List.copyOf(groups);
    }

    /**
     * @param chasers   the groups
     * @param ofGroups  how long the turn serves each
     * @param perMinute most contacts in a minute of full quality
     */
    public static TurnChance of(Collection<Square> squares, List<ChaserGroup> chasers, List<GroupMinutes> ofGroups,
            double lengthMinutes, double perMinute, double bird, double happens, double usable, WorthFigures figures) {
        double callers = 0;
        double callersMinutes = 0;
        double[] ofGroup = new double[chasers.size()];
        for (int g = 0; g < ofGroup.length; g++) {
            GroupMinutes minutes = ofGroups.get(g);
            ofGroup[g] = figures.callers() * minutes.share() * chasers.get(g).needs().ofAny(squares);
            callers += ofGroup[g];
            callersMinutes += ofGroup[g] * minutes.inReach();
        }
        double minutes = callers > 0 ? callersMinutes / callers : 0;
        double contacts = perMinute * minutes;
        double served = callers > 0 ? Math.min(1, contacts / callers) : 0;
        List<Part> parts = new ArrayList<>();
        for (int g = 0; g < ofGroup.length; g++) {
            double share = ofGroups.get(g).share();
            parts.add(new Part(share, ofGroups.get(g).minutes(), ofGroup[g], Math.min(figures.surest(),
                    bird * happens * usable * figures.callers() * share * served)));
        }
        return new TurnChance(new TreeSet<>(squares), parts, minutes, lengthMinutes, contacts, callers, bird, happens, usable);
    }

    /** How much of its time counts, 0 to 1. */
    public double quality() {
        return lengthMinutes > 0 ? Math.min(1, minutes / lengthMinutes) : 0;
    }

    /** Chance that there is a turn at all: the bird works, the site can be used and the team is there. */
    public double chance() {
        return bird * happens * usable;
    }

    /** The probability for one who needs a square, by group. */
    public double[] probabilities() {
        return groups.stream().mapToDouble(Part::probability).toArray();
    }

    /** The same turn with another chance that it happens. */
    public TurnChance happening(double chance, WorthFigures figures) {
        if (chance == happens) {
            return this;
        }
        double served = callers > 0 ? Math.min(1, contacts / callers) : 0;
        return new TurnChance(squares, groups.stream().map(part -> new Part(part.share, part.minutes, part.callers,
                Math.min(figures.surest(), bird * chance * usable * figures.callers() * part.share * served))).toList(),
                minutes, lengthMinutes, contacts, callers, bird, chance, usable);
    }

    /** Expected chasers served with a square they needed, if it were the only turn. @param chasers the groups */
    public double alone(List<ChaserGroup> chasers) {
        return alone(chasers, group -> true);
    }

    /** The same of some groups. */
    public double alone(List<ChaserGroup> chasers, Predicate<ChaserGroup> some) {
        double sum = 0;
        for (int g = 0; g < groups.size(); g++) {
            if (some.test(chasers.get(g))) {
                for (Square square : squares) {
                    sum += chasers.get(g).needs().of(square) * groups.get(g).probability();
                }
            }
        }
        return sum;
    }
}
