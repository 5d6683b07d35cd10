package org.straddle.kit.team;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

import org.straddle.kit.energy.Battery;
import org.straddle.kit.energy.CellType;
import org.straddle.kit.energy.Day;
import org.straddle.kit.energy.DayEnergy;
import org.straddle.kit.energy.Device;
import org.straddle.kit.energy.Spell;
import org.straddle.model.KitItem;
import org.straddle.model.Team;
import org.straddle.model.TeamDay;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.PolicyFigures;
import org.straddle.outlook.itinerary.Drives;
import org.straddle.outlook.itinerary.Itinerary;
import org.straddle.outlook.itinerary.Stay;
import org.straddle.outlook.itinerary.Work;
import org.straddle.words.Catalogue;
import org.straddle.words.TimeText;

/**
 * The energy of a team over its days: one supply for all that only draws, fed by all that only stores, and one for each
 * thing that brings its own battery. Of several equal batteries one counts, the others are its spares, and so are those
 * entered as spares. On the first day all are full, afterwards only where charging is planned.
 *
 * @param name    what it feeds from; empty for the batteries of the whole station
 * @param spareWh what its spare batteries would give besides, Wh, counted like those in use
 */
public record TeamEnergy(String name, List<DayEnergy> days, double spareWh) {

    private static final Catalogue TEXTS = Catalogue.of(TeamEnergy.class);

    public TeamEnergy {
        days = List.copyOf(days);
    }

    /** One for each supply of which both sides are known. */
    public static List<TeamEnergy> of(Team team, Itinerary itinerary, PolicyFigures policies, ZoneId zone) {
        return of(team, itinerary, policies, zone, false);
    }

    /** The same for a station that nobody switches off between set-up and take-down: it draws as if it received. */
    public static List<TeamEnergy> leftOn(Team team, Itinerary itinerary, PolicyFigures policies, ZoneId zone) {
        return of(team, itinerary, policies, zone, true);
    }

    private static List<TeamEnergy> of(Team team, Itinerary itinerary, PolicyFigures policies, ZoneId zone, boolean leftOn) {
        List<KitItem> items = Inventory.carriedBy(team).stream().filter(item -> item.getCount() > 0).toList();
        List<KitItem> used = items.stream().filter(item -> !isSpare(item, items)).toList();
        List<KitItem> spares = items.stream().filter(item -> isSpare(item, items)).toList();
        List<Day> days = days(team, itinerary, policies, zone);
        Function<KitItem, Device> device = item -> leftOn ? device(item).leftOn() : device(item);
        List<TeamEnergy> all = new ArrayList<>();
        List<KitItem> station = used.stream().filter(item -> stores(item) && !draws(item)).toList();
        supply("", station, used.stream().filter(item -> draws(item) && !stores(item)).map(device).toList(), days, policies,
                spareWh(station, spares, policies), all);
        used.stream().filter(item -> draws(item) && stores(item)).forEach(item -> supply(Naming.name(item), List.of(item),
                List.of(device.apply(item)), days, policies, spareWh(List.of(item), spares, policies), all));
        return all;
    }

    /** A spare rests while what it replaces is there too; in a ring of spares nothing says so, and all are in use. */
    private static boolean isSpare(KitItem item, List<KitItem> items) {
        return item.getSpareFor() != null && items.contains(item.getSpareFor())
                && SpareLoop.in(List.of(item)).stream().noneMatch(loop -> loop.items().contains(item));
    }

    /** Further pieces of what is in use, and what is entered as its spare. */
    private static double spareWh(List<KitItem> used, List<KitItem> spares, PolicyFigures policies) {
        double pieces = used.stream().mapToDouble(item -> (item.getCount() - 1) * countedWh(item, policies)).sum();
        return pieces + spares.stream().filter(spare -> used.contains(spare.getSpareFor()))
                .mapToDouble(spare -> spare.getCount() * countedWh(spare, policies)).sum();
    }

    private static double countedWh(KitItem item, PolicyFigures policies) {
        return battery(item).countedWh(policies.coldestDegC(), policies.usableEnergy());
    }

    private static void supply(String name, List<KitItem> batteries, List<Device> devices, List<Day> days,
            PolicyFigures policies, double spareWh, List<TeamEnergy> all) {
        if (!batteries.isEmpty() && !devices.isEmpty()) {
            all.add(new TeamEnergy(name, DayEnergy.of(batteries.stream().map(TeamEnergy::battery).toList(),
                    devices, days, policies.coldestDegC(), policies.usableEnergy()), spareWh));
        }
    }

    private static boolean stores(KitItem item) {
        return amount(item.getStoresWh()) > 0;
    }

    private static boolean draws(KitItem item) {
        return amount(item.getDrawsW()) + amount(item.getTransmitDrawsW()) + amount(item.getReceiveDrawsW())
                + amount(item.getIdleDrawsW()) > 0;
    }

    private static double amount(double value) {
        return Double.isFinite(value) && value > 0 ? value : 0;
    }

    private static Battery battery(KitItem item) {
        return new Battery(Naming.name(item), amount(item.getStoresWh()), CellType.valueOf(item.getChemistry().name()),
                amount(item.getAgeYears()));
    }

    /** A state that nobody measured draws the average; where there is none either, what it draws transmitting. */
    private static Device device(KitItem item) {
        double average = amount(item.getDrawsW());
        double transmit = item.getTransmitDrawsW() > 0 ? amount(item.getTransmitDrawsW()) : average;
        double receive = item.getReceiveDrawsW() > 0 ? amount(item.getReceiveDrawsW()) : average > 0 ? average : transmit;
        return new Device(Naming.name(item), Math.max(transmit, average), receive, amount(item.getIdleDrawsW()));
    }

    private static List<Day> days(Team team, Itinerary itinerary, PolicyFigures policies, ZoneId zone) {
        Map<LocalDate, List<Spell>> spells = new TreeMap<>();
        Map<LocalDate, Boolean> charged = new TreeMap<>();
        for (Stay stay : itinerary.of(team)) {
            TeamDay teamDay = Drives.dayOf(stay).orElse(null);
            Instant start = teamDay == null ? stay.window().start() : teamDay.getFrom();
            LocalDate date = start.atZone(zone).toLocalDate();
            charged.merge(date, teamDay != null && teamDay.isCharged(), Boolean::logicalOr);
            List<Spell> day = spells.computeIfAbsent(date, any -> new ArrayList<>());
            Duration working = Duration.ZERO;
            for (Work work : stay.turns()) {
                working = working.plus(work.window().duration());
            }
            Duration ready = policies.standing(stay.window()).minus(working);
            if (!ready.isNegative()) {
                // before the turns, so that batteries run out rather too early
                day.add(new Spell("", ready, stay.window().start()));
            }
            for (Work work : stay.turns()) {
                day.add(new Spell(TEXTS.text("energy.turn", "bird", Naming.name(work.bird()), "time",
                        TimeText.of(zone).clock(work.window().start())), work.window().duration(), work.window().start()));
            }
        }
        List<Day> days = new ArrayList<>();
        spells.forEach((date, day) -> days.add(new Day(date.toString(), day, days.isEmpty() || charged.get(date))));
        return days;
    }

    /** Of all supplies of a team; one sentence that says so where nothing is known. */
    public static List<String> lines(List<TeamEnergy> supplies) {
        if (supplies.isEmpty()) {
            return List.of(TEXTS.text("energy.unknown"));
        }
        List<String> lines = supplies.stream().flatMap(supply -> supply.lines().stream()).toList();
        return lines.isEmpty() ? List.of(TEXTS.text("energy.noPlan")) : lines;
    }

    /** One sentence for each day, and one for each battery that does not last. */
    public List<String> lines() {
        return days.stream().flatMap(day -> lines(day).stream()).toList();
    }

    /** What there is to say of one of its days. */
    public List<String> lines(DayEnergy day) {
        List<String> lines = new ArrayList<>();
        lines.add(TEXTS.text(day.marginWh() < 0 ? "energy.short" : "energy.day", "day", LocalDate.parse(day.day()),
                "supply", supply(), "morning", day.morningWh(), "drawn", day.drawnWh(), "margin", Math.abs(day.marginWh())));
        day.runsOut().forEach((battery, turn) -> lines.add(turn.isEmpty()
                ? TEXTS.text("energy.empty.before", "battery", battery.name())
                : TEXTS.text("energy.empty", "battery", battery.name(), "turn", turn)));
        if (day.marginWh() < 0 && spareWh > 0) {
            lines.add(TEXTS.text("energy.spare", "spare", spareWh, "enough", spareWh + day.marginWh() >= 0 ? "yes" : "no"));
        }
        return lines;
    }

    /** The station's batteries, or the thing with a battery of its own. */
    public String supply() {
        return name.isEmpty() ? TEXTS.text("energy.station") : name;
    }
}
