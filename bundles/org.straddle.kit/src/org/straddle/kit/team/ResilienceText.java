package org.straddle.kit.team;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.straddle.kit.work.Addition;
import org.straddle.kit.work.Answer;
import org.straddle.kit.work.Gear;
import org.straddle.kit.work.Requirement;
import org.straddle.kit.work.Task;
import org.straddle.kit.work.Work;
import org.straddle.model.Kit;
import org.straddle.model.KitSource;
import org.straddle.words.Catalogue;

/** Answers about a kit in sentences. */
public final class ResilienceText {

    private static final Catalogue TEXTS = Catalogue.of(ResilienceText.class);

    private static final Duration LIMIT = Duration.ofSeconds(10);

    private final Resilience resilience;

    public ResilienceText(Resilience resilience) {
        this.resilience = resilience;
    }

    /** All that is to be said, what is planned first; each item and each pair once. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.addAll(lines(resilience.planned()));
        lines.addAll(lines(resilience.further()));
        Stream.concat(resilience.planned().stream(), resilience.further().stream()).flatMap(answer -> answer.circular().stream())
                .distinct().forEach(gear -> lines.add(circular(gear)));
        lines.addAll(closing());
        return lines;
    }

    private List<String> lines(List<Answer> answers) {
        List<String> lines = new ArrayList<>();
        answers.stream().filter(answer -> !answer.possible()).forEach(answer -> lines.add(cannot(answer)));
        SinglePoint.in(answers).forEach(point -> lines.add(single(point)));
        List<String> surviving = answers.stream().filter(answer -> answer.possible() && answer.single().isEmpty())
                .map(answer -> work(answer.task())).toList();
        if (!surviving.isEmpty()) {
            lines.add(TEXTS.text("survives", "work", surviving));
        }
        FatalPair.in(answers).forEach(pair -> lines.add(pair(pair)));
        return lines;
    }

    /** Only what a single failure stops, and what a kit cannot do. */
    public List<String> singlePoints() {
        List<String> lines = new ArrayList<>();
        resilience.planned().stream().filter(answer -> !answer.possible()).forEach(answer -> lines.add(cannot(answer)));
        resilience.singlePoints().forEach(point -> lines.add(single(point)));
        return lines;
    }

    /** What to add, and what is carried without use. */
    public List<String> closing() {
        List<String> lines = new ArrayList<>();
        if (!resilience.planned().isEmpty()) {
            resilience.addition(LIMIT).map(this::addition).ifPresentOrElse(lines::add, () -> lines.add(TEXTS.text("addition.none")));
        }
        List<String> hears = resilience.further().stream().filter(answer -> answer.possible() && answer.task().work() == Work.LINEAR_FULL_DUPLEX)
                .map(answer -> work(answer.task())).toList();
        if (!hears.isEmpty()) {
            lines.add(TEXTS.text("offer.fullDuplex", "work", hears));
        }
        if (!resilience.idle().isEmpty()) {
            lines.add(TEXTS.text("idle", "items", resilience.idle().stream().map(ResilienceText::name).toList()));
        }
        return lines;
    }

    /** {@code FM (up 2m, down 70cm)}. */
    public String work(Task task) {
        String work = TEXTS.text(task.work());
        return task.work() == Work.PROOF || task.uplink().isEmpty() && task.downlink().isEmpty() ? work
                : TEXTS.text("work.bands", "work", work, "up", band(task.uplink()), "down", band(task.downlink()));
    }

    private static String band(String band) {
        return band.isEmpty() ? TEXTS.text("band.unknown") : band;
    }

    /** {@code The kit cannot do FM (up 2m, down 70cm): an antenna for 70cm is missing.} */
    public String cannot(Answer answer) {
        return TEXTS.text("cannot", "work", work(answer.task()),
                "missing", answer.missing().stream().map(ResilienceText::missing).distinct().toList());
    }

    private static String missing(Requirement requirement) {
        return TEXTS.text("missing." + requirement.kind().name(), "band", requirement.band().isEmpty() ? "none" : requirement.band(),
                "item", requirement.of());
    }

    /** What is lost when an item fails, and which piece helps. */
    public String single(SinglePoint point) {
        Optional<Gear> remedy = resilience.remedy(point);
        return remedy.map(found -> TEXTS.text("single.remedy", "item", name(point.gear()), "work", works(point.stops()),
                "spare", name(found), "source", source(found)))
                .orElseGet(() -> TEXTS.text("single.none", "item", name(point.gear()), "work", works(point.stops())));
    }

    /** {@code FM (up 2m, down 70cm)}, one for each. */
    public List<String> works(List<Answer> answers) {
        return answers.stream().map(answer -> work(answer.task())).toList();
    }

    private String pair(FatalPair pair) {
        Gear one = pair.failure().gear().get(0);
        Gear other = pair.failure().gear().get(1);
        return one.equals(other) ? TEXTS.text("pair.same", "item", name(one), "work", works(pair.stops()))
                : TEXTS.text("pair", "one", name(one), "other", name(other), "work", works(pair.stops()));
    }

    public static String circular(Gear gear) {
        return TEXTS.text("circular", "item", name(gear));
    }

    private String addition(Addition addition) {
        if (addition.gear().isEmpty()) {
            return TEXTS.text("addition.nothing");
        }
        Function<Gear, String> named = gear -> TEXTS.text("addition.item", "item", name(gear), "source", source(gear));
        return TEXTS.text("addition", "items", addition.gear().stream().map(named).toList(),
                "price", addition.cost().cents() / 100.0, "kg", addition.cost().grams() / 1000.0,
                "proven", addition.proven() ? "yes" : "no");
    }

    private String source(Gear gear) {
        return resilience.inventory().item(gear).map(item -> item.eContainer() instanceof Kit kit
                && kit.getSource() == KitSource.SHOPPING_LIST ? "shop" : "stock").orElse("stock");
    }

    private static String name(Gear gear) {
        return gear.name();
    }
}
