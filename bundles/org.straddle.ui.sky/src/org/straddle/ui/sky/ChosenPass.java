package org.straddle.ui.sky;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.sky.pass.PassKey;
import org.straddle.ui.sky.pass.Worker;

/** Which pass the sky views look at: one choice for all of them, so that they speak of the same. UI thread only. */
final class ChosenPass {

    private static final ChosenPass CURRENT = new ChosenPass();

    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private PassKey key;

    private ChosenPass() {
    }

    static ChosenPass current() {
        return CURRENT;
    }

    void addListener(Runnable listener) {
        listeners.add(listener);
    }

    void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    Optional<PassKey> key() {
        return Optional.ofNullable(key);
    }

    void choose(PassKey chosen) {
        if (!chosen.equals(key)) {
            key = chosen;
            listeners.forEach(Runnable::run);
        }
    }

    /** The chosen pass; else the first one that is worked, else the first; empty when there are none. */
    Optional<SitePass> in(Outlook outlook) {
        return key().flatMap(chosen -> chosen.in(outlook)).or(() -> outlook.passes().stream()
                .filter(found -> Worker.works(outlook.event(), found)).findFirst())
                .or(() -> outlook.passes().stream().findFirst());
    }

    /** Goes to the pass of the same bird over the same site that comes so many later. */
    void step(Outlook outlook, int later) {
        in(outlook).ifPresent(now -> {
            List<SitePass> all = outlook.passes(now.site(), now.bird());
            int next = all.indexOf(now) + later;
            if (next >= 0 && next < all.size()) {
                choose(PassKey.of(all.get(next)));
            }
        });
    }
}
