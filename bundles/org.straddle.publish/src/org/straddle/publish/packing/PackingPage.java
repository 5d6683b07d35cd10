package org.straddle.publish.packing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.straddle.kit.GoingBack;
import org.straddle.kit.InCar;
import org.straddle.kit.Packing;
import org.straddle.kit.PackingRow;
import org.straddle.kit.asked.Provided;
import org.straddle.model.Event;
import org.straddle.model.KitItem;
import org.straddle.model.Team;
import org.straddle.model.Tick;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/**
 * What stands on a packing list, in words, for templates.
 *
 * @param key    tells the ticks of this list from those of others on one phone: letters, digits and hyphens
 * @param bags   in order of their names; things without a bag last
 * @param asks   what the plan asks for besides
 * @param marking what to lay down on lines and corners, and who watches the traffic
 * @param notes  energy, bags, flights
 * @param stops  where nothing may be left behind
 * @param back   what goes back to whom
 */
public record PackingPage(String title, String event, String key, String summary, List<Bag> bags, List<Ask> asks, List<String> marking,
        List<String> attention, List<String> notes, List<Stop> stops, List<String> back) {

    private static final Catalogue TEXTS = Catalogue.of(PackingPage.class);

    /** @param name empty for things in no bag */
    public record Bag(String name, String weight, List<Row> rows) {
    }

    /**
     * One line.
     *
     * @param details mode, spare, weight and note, parted by semicolons
     * @param owner   whose it is, empty where it stays with the team
     */
    public record Row(String id, int count, String name, String details, String spareFor, String weight, String owner, Mark packed,
            Mark checked, Mark tested, Mark returned, List<StopMark> inCar) {
    }

    /** A tick that somebody has set, or room for one; {@code at} as local text, {@code instant} for programs. */
    public record Mark(boolean set, String by, String at, String instant) {
    }

    /** A tick at a stop; {@code key} is that of the stop. */
    public record StopMark(String key, Mark mark) {
    }

    public record Ask(String title, boolean met, String sentence, List<String> because) {
    }

    /** @param key letters, digits and hyphens */
    public record Stop(String key, String name) {
    }

    public static PackingPage of(Packing packing, Outlook outlook) {
        return new Writer(packing, outlook).page();
    }

    /** {@code packing-team-2}, with a second number where a team before it has the same. */
    public static String fileName(Team team, Event event) {
        long before = event.getTeams().stream().takeWhile(other -> other != team).filter(other -> other.getNumber() == team.getNumber())
                .count();
        return "packing-team-" + team.getNumber() + (before == 0 ? "" : "-" + (before + 1));
    }

    public boolean isEmpty() {
        return bags.isEmpty() && asks.isEmpty();
    }

    public List<Row> rows() {
        return bags.stream().flatMap(bag -> bag.rows().stream()).toList();
    }

    /** Puts one list into words. */
    private static final class Writer {

        private final Packing packing;
        private final Event event;
        private final TimeText times;

        Writer(Packing packing, Outlook outlook) {
            this.packing = packing;
            this.event = outlook.event();
            this.times = TimeText.of(outlook.zone());
        }

        PackingPage page() {
            List<String> marking = new ArrayList<>(packing.asks().marking());
            packing.asks().lookout().ifPresent(marking::add);
            List<String> notes = new ArrayList<>(packing.energyLines());
            notes.addAll(packing.bagLines());
            return new PackingPage(TEXTS.text("page.title", "number", packing.list().teamNumber(), "team", packing.list().team()),
                    Naming.name(event), key(), packing.list().summary(), bags(), packing.asks().things().stream().map(Writer::ask).toList(),
                    marking, packing.remarks(), packing.list().isEmpty() ? List.of() : notes, packing.stays().stream().map(this::stop).toList(),
                    Stream.concat(packing.goingBack().stream().map(GoingBack::sentence),
                            packing.inCar().stream().map(InCar::sentence)).toList());
        }

        private String key() {
            return (event.getId() + "-" + packing.team().getId()).replaceAll("[^A-Za-z0-9-]", "-");
        }

        private List<Bag> bags() {
            Map<String, List<PackingRow>> byBag = new LinkedHashMap<>();
            packing.list().rows().stream().sorted(Comparator.comparing((PackingRow row) -> bag(row).isEmpty())
                    .thenComparing(Writer::bag, String.CASE_INSENSITIVE_ORDER))
                    .forEach(row -> byBag.computeIfAbsent(bag(row), any -> new ArrayList<>()).add(row));
            return byBag.entrySet().stream().map(entry -> new Bag(entry.getKey(), weight(entry.getValue()),
                    entry.getValue().stream().map(this::row).toList())).toList();
        }

        private static String bag(PackingRow row) {
            return row.item().getBag() == null ? "" : row.item().getBag().strip();
        }

        private static String weight(List<PackingRow> rows) {
            return TEXTS.text("page.weight", "kg", rows.stream().mapToDouble(PackingRow::weightKg).sum(), "unknown",
                    rows.stream().filter(row -> row.weightKg() == 0 && row.count() > 0).count());
        }

        private Row row(PackingRow row) {
            KitItem item = row.item();
            List<String> details = new ArrayList<>();
            if (!row.modes().isEmpty()) {
                details.add(TEXTS.text("page.for", "modes", row.modesText()));
            }
            row.spareFor().ifPresent(name -> details.add(TEXTS.text("page.spare", "item", name)));
            if (!row.weightText().isEmpty()) {
                details.add(row.weightText());
            }
            if (!row.note().isEmpty()) {
                details.add(row.note());
            }
            String owner = packing.goingBack().stream().filter(back -> back.items().contains(item)).map(GoingBack::owner).findFirst()
                    .orElse("");
            return new Row(String.valueOf(item.getId()).replaceAll("[^A-Za-z0-9-]", "-"), row.count(), row.name(),
                    String.join("; ", details), row.spareFor().orElse(""), row.weightText(), owner, mark(item.getTick()),
                    mark(item.getChecked()), mark(item.getTestedOnAir()), mark(item.getReturned()),
                    packing.stays().stream().flatMap(stay -> InCar.tick(item, stay.stop()).stream()
                            .map(tick -> new StopMark(key(stay.stop()), mark(tick)))).toList());
        }

        private Mark mark(Tick tick) {
            Instant at = tick == null ? null : tick.getAt();
            return tick == null ? new Mark(false, "", "", "")
                    : new Mark(true, tick.getBy() == null ? "" : tick.getBy(), at == null ? "" : day(at), at == null ? "" : at.toString());
        }

        private String day(Instant at) {
            return times.weekday(at) + " " + times.clock(at);
        }

        private static Ask ask(Provided thing) {
            return new Ask(thing.asked().title(), thing.isMet(), thing.sentence(), thing.asked().because());
        }

        private static String key(org.straddle.model.Stop stop) {
            return String.valueOf(stop.getId()).replaceAll("[^A-Za-z0-9-]", "-");
        }

        private Stop stop(Stay stay) {
            return new Stop(key(stay.stop()), TEXTS.text("page.stop", "site",
                    Naming.name(stay.site()), "day", times.weekday(stay.window().end()), "leave", times.clock(stay.window().end())));
        }
    }
}
