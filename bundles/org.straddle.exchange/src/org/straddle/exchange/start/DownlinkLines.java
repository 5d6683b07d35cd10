package org.straddle.exchange.start;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.straddle.model.Access;
import org.straddle.model.Fresh;
import org.straddle.model.Link;
import org.straddle.model.WorkMode;
import org.straddle.outlook.things.Band;
import org.straddle.words.Catalogue;

/** Where birds are heard, {@code BIRD: MHZ} or {@code BIRD: MHZ-MHZ} for a passband: element sets do not say it. */
final class DownlinkLines {

    private static final Catalogue TEXTS = Catalogue.of(DownlinkLines.class);

    private static final String MHZ = "(\\d{1,6}(?:[.,]\\d{1,6})?)";
    private static final Pattern LINE = Pattern.compile("(.+?):\\s*(?:" + MHZ + "(?:\\s*[-\u2013]\\s*" + MHZ + ")?\\s*(?:MHz)?)?",
            Pattern.CASE_INSENSITIVE);

    /**
     * What is known of a bird.
     *
     * @param downlink null when nobody knows it yet
     */
    record Heard(String bird, Link downlink) {

        WorkMode mode() {
            return isPassband() ? WorkMode.LINEAR : WorkMode.FM;
        }

        Access access() {
            return isPassband() ? Access.PASSBAND : Access.SINGLE_CHANNEL;
        }

        private boolean isPassband() {
            return downlink.getHighMhz() > downlink.getLowMhz();
        }
    }

    private DownlinkLines() {
    }

    /** @param birds names of those that the element sets are of */
    static ReadLines<Heard> read(String text, List<String> birds) {
        return ReadLines.of(text, line -> {
            Matcher parts = LINE.matcher(line);
            if (!parts.matches()) {
                throw new IllegalArgumentException(TEXTS.text("downlinkLines.form"));
            }
            String bird = birds.stream().filter(parts.group(1).strip()::equalsIgnoreCase).findFirst().orElseThrow(() ->
                    new IllegalArgumentException(TEXTS.text("downlinkLines.stranger", "bird", parts.group(1).strip())));
            if (parts.group(2) == null) {
                return new ReadLines.Understood<>(new Heard(bird, null), TEXTS.text("downlinkLines.unknown", "bird", bird), true);
            }
            double low = mhz(parts.group(2));
            double high = parts.group(3) == null ? low : mhz(parts.group(3));
            if (high < low) {
                throw new IllegalArgumentException(TEXTS.text("downlinkLines.order"));
            }
            Link link = Fresh.link(low, high);
            return new ReadLines.Understood<>(new Heard(bird, link), TEXTS.text("downlinkLines.told", "bird", bird,
                    "band", Band.of(low).map(Band::label).orElse("none"), "passband", high > low));
        });
    }

    private static double mhz(String text) {
        return Double.parseDouble(text.replace(',', '.'));
    }
}
