package org.straddle.store;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EAttribute;
import org.straddle.model.Acceptance;
import org.straddle.model.Event;
import org.straddle.model.FigureRange;
import org.straddle.model.Policies;
import org.straddle.model.StraddlePackage;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;

/**
 * What became of an event that an older Straddle wrote. It is read into objects of today; on the disk it stays as it is
 * until somebody saves. Format 1 holds acceptances against a sentence, formats 2 and 3 against facts that are stated
 * otherwise today: none can be carried over, so somebody looks again. Formats 1 and 2 say what repeated passes from a
 * square are worth; format 3 counts expected chasers. Up to format 3, visits and times of drives
 * stand under other names.
 *
 * @param from     format of the event's own file
 * @param lost     the findings whose acceptances could not be carried over, as {@code rule id id …}
 * @param repeats  worths of repeated passes that the event named, which count no more
 * @param figures  of the policies, which made no sense; what they stood for is written in
 */
public record Migration(int from, List<String> lost, List<String> repeats, List<EAttribute> figures) {

    private static final Catalogue TEXTS = Catalogue.of(Migration.class);
    /** Apart from what is retired or renamed, their things and features are called as today, and there are fewer of them. */
    private static final List<String> OLDER = List.of("urn:straddle:model:1", "urn:straddle:model:2", "urn:straddle:model:3");
    private static final int LAST_WITH_REPEAT_WORTHS = 2;
    private static final Map<String, String> RENAMED = Map.of("legTimes", "enteredDrives", "surveys", "visits",
            "surveyor", "visitor", "survey", "visit", "surveyAgeLimitDays", "visitAgeLimitDays");
    private static final Map<String, String> BEGINNINGS_OF_RULES = Map.of("leg", "drive", "survey", "visit");
    private static final Pattern IS_OLDER = Pattern.compile("xmlns(?::\\w+)?\\s*=\\s*[\"']("
            + String.join("|", OLDER) + ")[\"']");
    private static final String REPEAT_WORTHS = "repeatWorths";
    private static final Pattern REPEAT_WORTH = Pattern.compile("<" + REPEAT_WORTHS + ">([^<]*)</");

    public Migration {
        lost = List.copyOf(lost);
        repeats = List.copyOf(repeats);
        figures = List.copyOf(figures);
    }

    /** Lets files of older formats be read as objects of today. */
    static void prepare(EventResourceSet set) {
        OLDER.forEach(older -> set.getPackageRegistry().put(older, StraddlePackage.eINSTANCE));
    }

    /** Features that a file may hold because it is old, and that are left out. */
    static Set<String> retired(byte[] file) {
        return format(file) <= LAST_WITH_REPEAT_WORTHS ? Set.of(REPEAT_WORTHS) : Set.of();
    }

    /** Features that a file calls otherwise because it is old, with their names of today. */
    static Map<String, String> renamed(byte[] file) {
        return isOfToday(file) ? Map.of() : RENAMED;
    }

    static boolean isOfToday(byte[] file) {
        return format(file) == Format.CURRENT;
    }

    private static int format(byte[] file) {
        Matcher older = IS_OLDER.matcher(new String(file, StandardCharsets.UTF_8));
        return older.find() ? Format.of(older.group(1)).orElseThrow() : Format.CURRENT;
    }

    /**
     * Takes out of an event what does not hold in the format of today.
     *
     * @param file the event's own file, as it was read
     * @return null when it is of the format of today
     */
    static Migration of(byte[] file, Event event) {
        int from = format(file);
        if (from == Format.CURRENT) {
            return null;
        }
        List<String> lost = event.getAcceptances().stream().map(Acceptance::getFinding).map(String::valueOf).toList();
        event.getAcceptances().clear();
        List<String> repeats = REPEAT_WORTH.matcher(new String(file, StandardCharsets.UTF_8)).results()
                .map(worth -> worth.group(1).strip()).toList();
        return new Migration(from, lost, repeats, settle(event.getPolicies()));
    }

    /** Forms of formats 1 and 2 took a 0 where it makes no sense; what was used then was the usual figure. */
    private static List<EAttribute> settle(Policies policies) {
        List<EAttribute> settled = policies == null ? List.of() : policies.eClass().getEAllAttributes().stream()
                .filter(figure -> FigureRange.of(figure).filter(range -> !range.holds(((Number) policies.eGet(figure)).doubleValue()))
                        .isPresent()).toList();
        settled.forEach(policies::eUnset);
        return settled;
    }

    /** The rule of a finding under its id of today. */
    private static String rule(String finding) {
        String then = finding.split(" ")[0];
        String beginning = then.split("-")[0];
        return BEGINNINGS_OF_RULES.getOrDefault(beginning, beginning) + then.substring(beginning.length());
    }

    /** What to tell whoever opened it. */
    public String sentence() {
        return TEXTS.text("migration.opened", "from", from, "to", Format.CURRENT, "lost", lost.size(), "findings",
                lost.stream().map(Migration::rule).distinct().toList(), "repeats", !repeats.isEmpty(),
                "worths", repeats, "figures", figures.size(), "names", figures.stream().map(Naming::feature).toList());
    }
}
