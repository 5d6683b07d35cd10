package org.straddle.publish;

import java.util.Locale;

import org.straddle.model.Bird;
import org.straddle.model.Link;
import org.straddle.model.Turn;

/** How sheets print what to tune to: nominal frequencies, before Doppler. */
final class Frequencies {

    private Frequencies() {
    }

    /** The agreed downlink, else the bird's. */
    static String downlink(Turn turn) {
        return isAgreed(turn) ? mhz(turn.getDownlinkMhz()) + " MHz (agreed)" : link(turn.getBird().getDownlink());
    }

    /** The uplink that leads to the agreed downlink, else the bird's. */
    static String uplink(Turn turn) {
        Link up = turn.getBird().getUplink();
        Link down = turn.getBird().getDownlink();
        if (!isAgreed(turn) || up == null || down == null || !isPassband(up)) {
            return link(up);
        }
        double aboveLow = turn.getDownlinkMhz() - down.getLowMhz();
        double wanted = isInverted(turn.getBird()) ? up.getHighMhz() - aboveLow : up.getLowMhz() + aboveLow;
        return mhz(wanted) + " MHz (for the agreed downlink)";
    }

    static String tone(Bird bird) {
        Link up = bird.getUplink();
        return up == null || !(up.getToneHz() > 0) ? "" : String.format(Locale.ROOT, "%.1f Hz", up.getToneHz());
    }

    static boolean isInverted(Bird bird) {
        return bird.getUplink() != null && bird.getUplink().isInverted()
                || bird.getDownlink() != null && bird.getDownlink().isInverted();
    }

    private static boolean isAgreed(Turn turn) {
        return turn.getDownlinkMhz() > 0;
    }

    private static boolean isPassband(Link link) {
        return link.getHighMhz() > link.getLowMhz();
    }

    private static String link(Link link) {
        if (link == null || !(link.getLowMhz() > 0)) {
            return "not known";
        }
        return isPassband(link) ? mhz(link.getLowMhz()) + "–" + mhz(link.getHighMhz()) + " MHz"
                : mhz(link.getLowMhz()) + " MHz";
    }

    private static String mhz(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }
}
