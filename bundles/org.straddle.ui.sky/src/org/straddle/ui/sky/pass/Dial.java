package org.straddle.ui.sky.pass;

import java.util.ArrayList;
import java.util.List;

import org.straddle.model.Bird;
import org.straddle.model.Link;
import org.straddle.sky.Doppler;
import org.straddle.words.Catalogue;

/**
 * One link of the bird, and what Doppler makes of it at the station: what to add to the nominal frequency on the
 * dial. A downlink is heard higher while the bird comes nearer; an uplink has to be sent lower by then, so that the
 * bird hears it where it should.
 *
 * @param nominalMhz frequency at the bird
 * @param which      which frequency it is: the channel, the agreed one, or the middle of a passband
 */
public record Dial(Direction direction, double nominalMhz, String which) {

    private static final Catalogue TEXTS = Catalogue.of(Dial.class);

    /** Which way the link goes. */
    public enum Direction {
        DOWNLINK(1), UPLINK(-1);

        private final int sign;

        Direction(int sign) {
            this.sign = sign;
        }

        public String word() {
            return TEXTS.text(this);
        }
    }

    /**
     * The links of a bird that are known.
     *
     * @param agreedDownlinkMhz within a passband; 0 for none
     */
    static List<Dial> of(Bird bird, double agreedDownlinkMhz) {
        List<Dial> dials = new ArrayList<>();
        boolean agreed = agreedDownlinkMhz > 0 && isKnown(bird.getDownlink());
        if (agreed) {
            dials.add(new Dial(Direction.DOWNLINK, agreedDownlinkMhz, TEXTS.text("dial.agreedFrequency")));
        } else if (isKnown(bird.getDownlink())) {
            dials.add(of(Direction.DOWNLINK, bird.getDownlink()));
        }
        if (isKnown(bird.getUplink())) {
            dials.add(agreed && isPassband(bird.getUplink())
                    ? new Dial(Direction.UPLINK, uplinkFor(bird, agreedDownlinkMhz), TEXTS.text("dial.frequencyAgreedDownlink"))
                    : of(Direction.UPLINK, bird.getUplink()));
        }
        return List.copyOf(dials);
    }

    private static Dial of(Direction direction, Link link) {
        return isPassband(link)
                ? new Dial(direction, (link.getLowMhz() + link.getHighMhz()) / 2, TEXTS.text("dial.middlePassband"))
                : new Dial(direction, link.getLowMhz(), TEXTS.text("dial.channel"));
    }

    private static double uplinkFor(Bird bird, double downlinkMhz) {
        double aboveLow = downlinkMhz - bird.getDownlink().getLowMhz();
        boolean inverted = bird.getUplink().isInverted() || bird.getDownlink().isInverted();
        return inverted ? bird.getUplink().getHighMhz() - aboveLow : bird.getUplink().getLowMhz() + aboveLow;
    }

    private static boolean isKnown(Link link) {
        return link != null && link.getLowMhz() > 0;
    }

    private static boolean isPassband(Link link) {
        return link.getHighMhz() > link.getLowMhz();
    }

    /** What to add to the nominal frequency on the dial, kHz. */
    public double addKhz(double rangeRateKmS) {
        return direction.sign * Doppler.shiftHz(nominalMhz, rangeRateKmS) / 1000;
    }

    /** {@code Listen 436.780}, megahertz. */
    public String verb() {
        return TEXTS.text("dial.verb", "downlink", direction == Direction.DOWNLINK, "mhz", nominalMhz);
    }
}
