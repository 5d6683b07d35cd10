package org.straddle.kit;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.straddle.model.KitItem;
import org.straddle.model.Role;
import org.straddle.model.WorkMode;

/**
 * What no mode of work can do without: a radio, an antenna, the feedline between them, and power; for data a computer
 * besides. Common practice, no source.
 *
 * <p>Where one thing does two jobs the second is seen only if it is written down: an antenna with a cable of its own
 * wants an item with the role feedline, a radio with a built-in modem one with the role computer. Power is the
 * exception: whatever stores energy, such as a handheld radio with its battery, counts as power too.
 */
final class NeededRoles {

    private static final Map<WorkMode, Set<Role>> BY_MODE = new EnumMap<>(Map.of(
            WorkMode.FM, EnumSet.of(Role.RADIO, Role.ANTENNA, Role.FEEDLINE, Role.POWER),
            WorkMode.LINEAR, EnumSet.of(Role.RADIO, Role.ANTENNA, Role.FEEDLINE, Role.POWER),
            WorkMode.DATA, EnumSet.of(Role.RADIO, Role.ANTENNA, Role.FEEDLINE, Role.POWER, Role.COMPUTER)));

    private NeededRoles() {
    }

    /** The roles that the mode needs and none of these items fills. */
    static Set<Role> missing(WorkMode mode, List<KitItem> items) {
        Set<Role> missing = EnumSet.copyOf(BY_MODE.get(mode));
        for (KitItem item : items) {
            missing.remove(item.getRole());
            if (item.getStoresWh() > 0) {
                missing.remove(Role.POWER);
            }
        }
        return missing;
    }
}
