package org.straddle.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** The id of a rule is written once, in the list of its kind; whoever means the rule names the constant. */
class RuleIdsTest {

    private static final Set<String> LISTS = Set.of("PlanRule.java", "CareRule.java", "CheckRule.java");

    private static final Pattern ENTRY = Pattern.compile("(?m)^ {4}[A-Z_]+\\(\"([a-z]+(?:-[a-z]+)+)\"\\)[,;]");

    @Test
    void noIdIsWrittenASecondTime() {
        Set<String> ids = ids();
        List<String> again = new ArrayList<>();
        for (String bundle : SourceTree.shipped()) {
            for (Path file : SourceTree.sources(bundle)) {
                if (!LISTS.contains(file.getFileName().toString())) {
                    String text = SourceTree.text(file);
                    ids.stream().filter(id -> text.contains('"' + id + '"')).forEach(id -> again.add(file.getFileName() + ": " + id));
                }
            }
        }
        assertEquals(List.of(), again);
    }

    @Test
    void theListsHaveIds() {
        assertTrue(ids().containsAll(Set.of("stops-overlap", "time-in-hand", "announcement-outdated")), ids().toString());
    }

    private static Set<String> ids() {
        Set<String> ids = new TreeSet<>();
        for (String bundle : SourceTree.shipped()) {
            for (Path file : SourceTree.sources(bundle)) {
                if (LISTS.contains(file.getFileName().toString())) {
                    Matcher entry = ENTRY.matcher(SourceTree.text(file));
                    while (entry.find()) {
                        ids.add(entry.group(1));
                    }
                }
            }
        }
        return ids;
    }
}
