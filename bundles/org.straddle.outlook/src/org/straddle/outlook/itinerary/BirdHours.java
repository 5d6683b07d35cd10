package org.straddle.outlook.itinerary;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import org.straddle.model.Bird;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/**
 * When a bird can be worked at all, wherever one stands: it works, its calendar has it on, and it is in sunlight if it
 * needs that. {@link Outlook#workable} gives the times at which nothing of this is broken.
 */
public final class BirdHours {

    private BirdHours() {
    }

    /** What a turn breaks. Nothing is known of sunlight where no passes are known. */
    public static Set<PlanRule> broken(Outlook outlook, Work work) {
        Set<PlanRule> broken = EnumSet.noneOf(PlanRule.class);
        if (isNotWorking(work.bird())) {
            broken.add(PlanRule.BIRD_NOT_WORKING);
        }
        if (isOff(outlook, work)) {
            broken.add(PlanRule.BIRD_OFF);
        }
        if (isUnlit(outlook, work)) {
            broken.add(PlanRule.BIRD_UNLIT);
        }
        return broken;
    }

    /** Whether it is reported dead. */
    public static boolean isNotWorking(Bird bird) {
        return Outlook.isNotWorking(bird);
    }

    /** Whether the calendar has it off during part of a turn. */
    public static boolean isOff(Outlook outlook, Work work) {
        return !isWhole(outlook.switchedOn(work.bird(), work.window()), work);
    }

    /** Whether it is in the dark during part of a turn and needs the sun. */
    public static boolean isUnlit(Outlook outlook, Work work) {
        return work.bird().isLitOnly() && TurnPass.isKnown(outlook, work)
                && !isWhole(outlook.lit(work.bird(), work.window()), work);
    }

    private static boolean isWhole(List<Window> parts, Work work) {
        return parts.equals(List.of(work.window()));
    }
}
