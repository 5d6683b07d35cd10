package org.straddle.publish;


import org.straddle.model.Bird;
import org.straddle.model.Link;
import org.straddle.model.Turn;
import org.straddle.words.Catalogue;
import org.straddle.words.FigureText;

/** How sheets print what to tune to: nominal frequencies, before Doppler. */
final class Frequencies {

    private static final Catalogue TEXTS = Catalogue.of(Frequencies.class);

    private Frequencies() {
    }

    /** The agreed downlink, else the bird's. */
    static String downlink(Turn turn) {
        return isAgreed(turn) ? TEXTS.text("frequencies.mhzAgreed",
                "mhz", mhz(turn.getDownlinkMhz())) : link(turn.getBird().getDownlink());
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
        return TEXTS.text("frequencies.mhzAgreedDownlink", "mhz", mhz(wanted));
    }

    static String tone(Bird bird) {
        Link up = bird.getUplink();
        return up == null || !(up.getToneHz() > 0) ? "" : TEXTS.text("frequencies.hz", "toneHz", up.getToneHz());
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
            return TEXTS.text("announcement.notKnown");
        }
        return isPassband(link) ? TEXTS.text("frequencies.mhz", "mhz", mhz(link.getLowMhz()),
                "mhz2", mhz(link.getHighMhz()))
                : TEXTS.text("frequencies.single", "mhz", mhz(link.getLowMhz()));
    }

    private static String mhz(double value) {
        return FigureText.inCurrent().fixed(3, value);
    }
}
