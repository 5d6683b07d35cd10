package org.straddle.kit.team;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

import org.straddle.model.DryRun;
import org.straddle.model.KitItem;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;

/**
 * What a team tried before departure. A run fails when no contact was made or an item failed; it counts until a later run
 * with the same kit succeeds. A failed item counts besides until somebody ticks that it was tested on the air later.
 *
 * @param runs oldest first; those without a time last
 */
public record DryRuns(List<DryRun> runs) {

    private static final Catalogue TEXTS = Catalogue.of(DryRuns.class);

    public DryRuns {
        runs = List.copyOf(runs);
    }

    public static DryRuns of(Team team) {
        return new DryRuns(team.getDryRuns().stream()
                .sorted(Comparator.comparing(DryRun::getAt, Comparator.nullsLast(Comparator.naturalOrder()))).toList());
    }

    /** What still counts against the kit, a sentence each. */
    public List<String> open() {
        Map<Object, DryRun> last = new LinkedHashMap<>();
        runs.forEach(run -> last.put(run.getKit() == null ? "" : run.getKit(), run));
        List<DryRun> failed = last.values().stream().filter(run -> !succeeded(run)).toList();
        List<DryRun> items = runs.stream().filter(run -> run.getFailed() != null && !failed.contains(run))
                .filter(run -> !testedAfter(run.getFailed(), run) && runs.stream().noneMatch(later -> worksAfter(later, run))).toList();
        return Stream.concat(failed.stream(), items.stream()).map(DryRuns::sentence).distinct().toList();
    }

    private static boolean succeeded(DryRun run) {
        return run.isWorked() && run.getFailed() == null;
    }

    /** A later success with the kit of the failure says that the item was seen to. */
    private static boolean worksAfter(DryRun later, DryRun run) {
        return succeeded(later) && Objects.equals(later.getKit(), run.getKit()) && later.getAt() != null && run.getAt() != null
                && later.getAt().isAfter(run.getAt());
    }

    private static boolean testedAfter(KitItem item, DryRun run) {
        return item.getTestedOnAir() != null && item.getTestedOnAir().getAt() != null && run.getAt() != null
                && item.getTestedOnAir().getAt().isAfter(run.getAt());
    }

    /** {@code The dry run of 12 Jun 2027 by Q0AAR on Tern-1 failed: “radio”.} */
    private static String sentence(DryRun run) {
        List<String> why = new ArrayList<>();
        if (run.getFailed() != null) {
            why.add(TEXTS.text("dryRun.item", "item", Naming.name(run.getFailed())));
        }
        if (!run.isWorked()) {
            why.add(TEXTS.text("dryRun.noContact"));
        }
        return TEXTS.text("dryRun.failed", "day", run.getAt() == null ? "" : run.getAt().atZone(ZoneOffset.UTC).toLocalDate(),
                "dated", run.getAt() == null ? "no" : "yes", "by", text(run.getBy()), "bird", run.getBird() == null ? "none" : Naming.name(run.getBird()),
                "kit", run.getKit() == null ? "none" : Naming.name(run.getKit()), "why", why, "note", text(run.getNote()));
    }

    private static String text(String typed) {
        return typed == null || typed.isBlank() ? "none" : typed.strip();
    }
}
