package org.straddle.store;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;

import org.straddle.model.Acceptance;
import org.straddle.model.Event;
import org.straddle.model.StraddlePackage;
import org.straddle.words.Catalogue;

/**
 * What became of an event that an older Straddle wrote. It is read into objects of today; on the disk it stays as it is
 * until somebody saves. Format 2 holds acceptances against facts, format 1 against a sentence: those of format 1 cannot
 * be carried over.
 *
 * @param from     format of the event's own file
 * @param lost     the findings whose acceptances could not be carried over, as {@code rule id id …}
 */
public record Migration(int from, List<String> lost) {

    private static final Catalogue TEXTS = Catalogue.of(Migration.class);
    /** Its things have the same names and features as those of today, and fewer of them. */
    private static final String FIRST = "urn:straddle:model:1";
    private static final Pattern IS_FIRST = Pattern.compile("xmlns(:\\w+)?\\s*=\\s*[\"']" + FIRST + "[\"']");

    public Migration {
        lost = List.copyOf(lost);
    }

    /** Lets files of older formats be read as objects of today. */
    static void prepare(EventResourceSet set) {
        set.getPackageRegistry().put(FIRST, StraddlePackage.eINSTANCE);
    }

    /**
     * Takes out of an event what does not hold in the format of today.
     *
     * @param file the event's own file, as it was read
     * @return null when it is of the format of today
     */
    static Migration of(byte[] file, Event event) {
        if (!IS_FIRST.matcher(new String(file, StandardCharsets.UTF_8)).find()) {
            return null;
        }
        List<String> lost = event.getAcceptances().stream().map(Acceptance::getFinding).map(String::valueOf).toList();
        event.getAcceptances().clear();
        return new Migration(1, lost);
    }

    /** What to tell whoever opened it. */
    public String sentence() {
        return TEXTS.text("migration.opened", "from", from, "to", Format.CURRENT, "lost", lost.size(), "findings",
                lost.stream().map(finding -> finding.split(" ")[0]).distinct().toList());
    }
}
