package org.straddle.worth;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

import org.eclipse.emf.ecore.EObject;
import org.straddle.model.Event;
import org.straddle.outlook.Outlook;
import org.straddle.sky.Window;

/**
 * What turns of an event were found to be worth, handed on from one copy of it to the next. A chance is known by the versions
 * of site and bird, by the time of the turn and by the chance that the site can be used, which others decide; it holds while
 * all else that it rests on is the same. Safe for use by many threads.
 */
public final class KnownChances {

    /** Some megabytes; a large plan has some hundred turns. */
    private static final int MOST = 20_000;

    private record Asked(Object site, Object bird, Window turn, double usable) {
    }

    /** What every chance rests on: conditions and policies of the event, and its chasers. */
    private final List<Object> common;
    private final List<Object> chasers;
    /** Whether every thing of the event can be told from every other; if not, nothing is handed on. */
    private final boolean unique;
    private final MinutesTable minutes;
    private final Map<Asked, TurnChance> byTurn;

    private KnownChances(List<Object> common, List<Object> chasers, boolean unique, MinutesTable minutes,
            Map<Asked, TurnChance> byTurn) {
        this.common = common;
        this.chasers = chasers;
        this.unique = unique;
        this.minutes = minutes;
        this.byTurn = byTurn;
    }

    /** @param before of an earlier copy of the event, or null */
    static KnownChances after(KnownChances before, Outlook outlook, List<ChaserGroup> groups, WorthFigures figures) {
        List<Object> common = List.of(outlook.conditions(), outlook.versions().ofHead());
        List<Object> chasers = chasers(outlook);
        boolean unique = outlook.versions().isUnique();
        boolean same = before != null && unique && before.unique && before.common.equals(common);
        MinutesTable minutes = same && before.minutes.isOf(groups) ? before.minutes
                : new MinutesTable(Homes.of(groups), outlook.policies().reachElevationDeg(), figures.quality());
        boolean holds = same && before.chasers.equals(chasers) && before.byTurn.size() < MOST;
        return new KnownChances(common, chasers, unique, minutes, holds ? before.byTurn : new ConcurrentHashMap<>());
    }

    private static List<Object> chasers(Outlook outlook) {
        Event event = outlook.event();
        List<Object> versions = new ArrayList<>();
        for (List<? extends EObject> things : List.of(event.getDemands(), event.getRegions(), event.getChaserList())) {
            things.forEach(thing -> versions.add(outlook.versions().of(thing)));
        }
        return versions;
    }

    MinutesTable minutes() {
        return minutes;
    }

    /**
     * @param usable   chance that the site can be used
     * @param computed asked for what is not known
     */
    TurnChance of(Object site, Object bird, Window turn, double usable, Supplier<TurnChance> computed) {
        Asked asked = new Asked(site, bird, turn, usable);
        TurnChance known = byTurn.get(asked);
        if (known == null) {
            known = computed.get();
            byTurn.put(asked, known);
        }
        return known;
    }
}
