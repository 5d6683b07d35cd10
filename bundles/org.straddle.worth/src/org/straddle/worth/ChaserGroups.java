package org.straddle.worth;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import org.straddle.grid.Square;
import org.straddle.model.Chaser;
import org.straddle.model.Event;
import org.straddle.sky.Place;
import org.straddle.sky.prediction.Area;

/**
 * The groups of the event's list of chasers: one for each square that some of them live in, as if all lived in its middle. A
 * chaser whose locator cannot be read lives where nobody knows.
 */
final class ChaserGroups {

    private ChaserGroups() {
    }

    static List<ChaserGroup> of(Event event) {
        Map<String, List<Set<Square>>> needs = new TreeMap<>();
        Map<String, Optional<Square>> homes = new TreeMap<>();
        for (Chaser chaser : event.getChaserList()) {
            Optional<Square> home = home(chaser);
            String name = home.map(Square::name).orElse("");
            homes.put(name, home);
            Set<Square> needed = new HashSet<>();
            chaser.getSquares().forEach(square -> Square.named(square).ifPresent(needed::add));
            needs.computeIfAbsent(name, any -> new ArrayList<>()).add(needed);
        }
        List<ChaserGroup> groups = new ArrayList<>();
        needs.forEach((name, each) -> groups.add(new ChaserGroup(Optional.empty(), name,
                homes.get(name).map(ChaserGroups::middle), new Needs.ByList(each))));
        return groups;
    }

    private static Area middle(Square square) {
        return Area.of(Place.of(square.centre().latitudeDeg(), square.centre().longitudeDeg()));
    }

    private static Optional<Square> home(Chaser chaser) {
        String locator = chaser.getLocator() == null ? "" : chaser.getLocator().strip().toUpperCase(Locale.ROOT);
        return locator.length() < 4 ? Optional.empty() : Square.named(locator.substring(0, 4));
    }
}
