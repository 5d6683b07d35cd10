package org.straddle.kit.table;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.model.Event;
import org.straddle.model.InertText;
import org.straddle.model.KitItem;
import org.straddle.model.Stop;
import org.straddle.model.StopTick;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Tick;
import org.straddle.words.Catalogue;

/**
 * Ticks that a phone page gives out, held against an event: one line for each tick, with columns id, tick, stop, by and at. Who
 * ticked and when is kept; where the event has a tick already, the later one counts. A dash for the time clears a tick. Nothing
 * changes before {@link #command}, and nothing may change while a line is refused.
 *
 * @param known lines that bring nothing new
 */
public record TickImport(List<Change> changes, int known, List<Refused> refused) {

    private static final Catalogue TEXTS = Catalogue.of(TickImport.class);

    private static final List<String> COLUMNS = List.of("id", "tick", "stop", "by", "at");
    private static final String CLEARED = "-";
    private static final int LONGEST_NAME = 100;

    /** What a tick says. */
    public enum Kind {
        PACKED(Literals.KIT_ITEM__TICK), CHECKED(Literals.KIT_ITEM__CHECKED), TESTED(Literals.KIT_ITEM__TESTED_ON_AIR),
        RETURNED(Literals.KIT_ITEM__RETURNED),
        /** In the car again before the team leaves a stop. */
        CAR(Literals.KIT_ITEM__IN_CAR);

        private final EReference slot;

        Kind(EReference slot) {
            this.slot = slot;
        }

        /** As the page writes it. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** @param line from 1 */
    public record Refused(int line, String why) {
    }

    /**
     * @param stop    of a tick in the car
     * @param becomes empty where the tick is cleared
     */
    public record Change(KitItem item, Kind kind, Optional<Stop> stop, Optional<Tick> becomes) {

        private Optional<Tick> present() {
            if (kind == Kind.CAR) {
                return item.getInCar().stream().filter(tick -> tick.getStop() == stop.orElse(null)).map(Tick.class::cast).findFirst();
            }
            return Optional.ofNullable((Tick) item.eGet(kind.slot));
        }

        /** An older tick than that of the event, or the same, brings nothing. */
        private boolean bringsSomething() {
            if (becomes.isEmpty()) {
                return present().isPresent();
            }
            return present().map(Tick::getAt).map(at -> becomes.get().getAt().isAfter(at)).orElse(true);
        }

        private Command command(EditingDomain domain) {
            if (kind != Kind.CAR) {
                return SetCommand.create(domain, item, kind.slot, becomes.isPresent() ? becomes.get() : SetCommand.UNSET_VALUE);
            }
            CompoundCommand both = new CompoundCommand();
            present().ifPresent(old -> both.append(RemoveCommand.create(domain, item, kind.slot, old)));
            becomes.ifPresent(tick -> both.append(AddCommand.create(domain, item, kind.slot, tick)));
            return both;
        }
    }

    public TickImport {
        changes = List.copyOf(changes);
        refused = List.copyOf(refused);
    }

    /** Whether a table holds ticks, one to a line, rather than kits. */
    public static boolean isMeant(SourceTable table) {
        return table.columns().stream().map(name -> name.strip().toLowerCase(Locale.ROOT)).toList().contains("tick");
    }

    public static TickImport into(Event event, SourceTable table) {
        return new Reading(event, table).run();
    }

    public boolean isEmpty() {
        return changes.isEmpty();
    }

    /** What it comes to, a sentence. */
    public String summary() {
        long cleared = changes.stream().filter(change -> change.becomes().isEmpty()).count();
        return TEXTS.text("ticks.summary", "set", changes.size() - cleared, "cleared", cleared, "known", known);
    }

    /** One undo. */
    public Command command(EditingDomain domain) {
        if (!refused.isEmpty()) {
            throw new IllegalStateException("a line is refused");
        }
        CompoundCommand all = new CompoundCommand();
        changes.forEach(change -> all.append(change.command(domain)));
        return all;
    }

    /** Reads one table. */
    private static final class Reading {

        /** What a change is about: no two lines may say it. */
        private record Place(KitItem item, Kind kind, Optional<Stop> stop) {
        }

        private final SourceTable table;
        private final Map<String, KitItem> items = new HashMap<>();
        private final Map<String, Stop> stops = new HashMap<>();
        private final Map<Place, Integer> said = new HashMap<>();
        private final List<Change> changes = new ArrayList<>();
        private final List<Refused> refused = new ArrayList<>();
        private int known;

        Reading(Event event, SourceTable table) {
            this.table = table;
            event.getKits().forEach(kit -> kit.getItems().forEach(item -> items.put(onPage(item.getId()), item)));
            if (event.getPlan() != null) {
                event.getPlan().getStops().forEach(stop -> stops.put(onPage(stop.getId()), stop));
            }
        }

        /** The page writes letters, digits and hyphens only. */
        private static String onPage(String id) {
            return String.valueOf(id).replaceAll("[^A-Za-z0-9-]", "-");
        }

        TickImport run() {
            List<String> missing = COLUMNS.stream().filter(column -> at(column) < 0).toList();
            if (!missing.isEmpty()) {
                return new TickImport(List.of(), 0, List.of(new Refused(1, TEXTS.text("ticks.columns", "missing", missing))));
            }
            for (SourceTable.Row row : table.rows()) {
                try {
                    take(row);
                } catch (IllegalArgumentException e) {
                    refused.add(new Refused(row.line(), e.getMessage()));
                }
            }
            return new TickImport(changes, known, refused);
        }

        private int at(String column) {
            return table.columns().stream().map(name -> name.strip().toLowerCase(Locale.ROOT)).toList().indexOf(column);
        }

        private String cell(SourceTable.Row row, String column) {
            return row.values().get(at(column)).strip();
        }

        private void take(SourceTable.Row row) {
            KitItem item = Optional.ofNullable(items.get(onPage(cell(row, "id"))))
                    .orElseThrow(() -> new IllegalArgumentException(TEXTS.text("ticks.noItem", "id", InertText.line(cell(row, "id")))));
            Kind kind = Stream.of(Kind.values()).filter(each -> each.word().equalsIgnoreCase(cell(row, "tick"))).findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(TEXTS.text("ticks.noKind", "word", InertText.line(cell(row, "tick")),
                            "words", Stream.of(Kind.values()).map(Kind::word).toList())));
            Optional<Stop> stop = kind != Kind.CAR ? Optional.empty()
                    : Optional.of(Optional.ofNullable(stops.get(onPage(cell(row, "stop")))).orElseThrow(
                            () -> new IllegalArgumentException(TEXTS.text("ticks.noStop", "id", InertText.line(cell(row, "stop"))))));
            Integer before = said.put(new Place(item, kind, stop), row.line());
            if (before != null) {
                throw new IllegalArgumentException(TEXTS.text("ticks.twice", "line", before));
            }
            Change change = new Change(item, kind, stop, cell(row, "at").equals(CLEARED) ? Optional.empty() : Optional.of(tick(row, stop)));
            if (change.bringsSomething()) {
                changes.add(change);
            } else {
                known++;
            }
        }

        private Tick tick(SourceTable.Row row, Optional<Stop> stop) {
            String by = InertText.line(cell(row, "by"));
            if (by.isBlank() || by.length() > LONGEST_NAME) {
                throw new IllegalArgumentException(TEXTS.text("ticks.nobody"));
            }
            Tick tick = stop.isPresent() ? StraddleFactory.eINSTANCE.createStopTick() : StraddleFactory.eINSTANCE.createTick();
            if (tick instanceof StopTick inCar) {
                inCar.setStop(stop.orElseThrow());
            }
            tick.setBy(by);
            try {
                tick.setAt(Instant.parse(cell(row, "at")));
            } catch (DateTimeParseException e) {
                throw new IllegalArgumentException(TEXTS.text("ticks.noTime", "text", InertText.line(cell(row, "at"))), e);
            }
            return tick;
        }
    }
}
