package org.straddle.kit.table;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.kit.team.Inventory;
import org.straddle.kit.work.Circles;
import org.straddle.kit.work.Gear;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.words.Catalogue;

/**
 * A table of kits held against an event. A line names its item by id, or by kit and name; what is not there yet is made.
 * Nothing changes before {@link #command}, and nothing may change while a line is refused.
 *
 * @param added   items, some perhaps in kits that are new too
 * @param changed items of the event with what they become
 * @param known   lines that say what the event says already
 * @param remarks what was left out
 */
public record KitImport(Event event, List<KitItem> added, Map<KitItem, KitItem> changed, int known, List<Refused> refused,
        List<String> remarks) {

    private static final Catalogue TEXTS = Catalogue.of(KitImport.class);

    /** @param line from 1 */
    public record Refused(int line, String why) {
    }

    public KitImport {
        added = List.copyOf(added);
        changed = Map.copyOf(changed);
        refused = List.copyOf(refused);
        remarks = List.copyOf(remarks);
    }

    /** @param kit where lines go that name no kit */
    public static KitImport into(Event event, SourceTable table, String kit) {
        return new Reading(event, table, kit).run();
    }

    public boolean isEmpty() {
        return added.isEmpty() && changed.isEmpty();
    }

    /** One undo. */
    public Command command(EditingDomain domain) {
        if (!refused.isEmpty()) {
            throw new IllegalStateException("a line is refused");
        }
        Map<String, KitItem> there = new HashMap<>();
        event.getKits().forEach(kit -> kit.getItems().forEach(item -> there.put(item.getId(), item)));
        CompoundCommand all = new CompoundCommand();
        List<Kit> kits = added.stream().map(item -> (Kit) item.eContainer()).distinct().toList();
        for (KitItem item : added) {
            if (item.getSpareFor() != null) {
                item.setSpareFor(there.getOrDefault(item.getSpareFor().getId(), item.getSpareFor()));
            }
        }
        for (Kit kit : kits) {
            List<KitItem> its = added.stream().filter(item -> item.eContainer() == kit).toList();
            Optional<Kit> known = event.getKits().stream().filter(other -> other.getId().equals(kit.getId())).findFirst();
            if (known.isPresent()) {
                all.append(AddCommand.create(domain, known.get(), Literals.KIT__ITEMS, its));
            } else {
                all.append(AddCommand.create(domain, event, Literals.EVENT__KITS, kit));
            }
        }
        changed.forEach((item, becomes) -> differing(item, becomes).forEach(feature -> all.append(
                SetCommand.create(domain, item, feature, value(becomes, feature, there)))));
        return all;
    }

    private static Stream<EStructuralFeature> differing(KitItem item, KitItem becomes) {
        return item.eClass().getEAllStructuralFeatures().stream().filter(feature -> feature != Literals.IDENTIFIED__ID)
                .filter(feature -> !same(item, becomes, feature));
    }

    private static boolean same(KitItem item, KitItem becomes, EStructuralFeature feature) {
        Object one = item.eGet(feature);
        Object other = becomes.eGet(feature);
        if (feature instanceof EReference reference && reference.isContainment()) {
            return reference.isMany() ? EcoreUtil.equals(list(one), list(other))
                    : EcoreUtil.equals((EObject) one, (EObject) other);
        }
        if (feature == Literals.KIT_ITEM__SPARE_FOR) {
            return Objects.equals(id(one), id(other));
        }
        return Objects.equals(one, other);
    }

    @SuppressWarnings("unchecked")
    private static List<EObject> list(Object value) {
        return (List<EObject>) value;
    }

    private static String id(Object item) {
        return item instanceof KitItem one ? one.getId() : null;
    }

    private static Object value(KitItem becomes, EStructuralFeature feature, Map<String, KitItem> there) {
        Object value = becomes.eGet(feature);
        if (value instanceof Collection<?> several) {
            return List.copyOf(several);
        }
        return value instanceof KitItem other ? there.getOrDefault(other.getId(), other) : value;
    }

    /** Reads one table. Everything happens on a copy of the kits. */
    private static final class Reading {

        private final Event event;
        private final SourceTable table;
        private final String usualKit;
        private final EcoreUtil.Copier copier = new EcoreUtil.Copier();
        private final List<Kit> kits = new ArrayList<>();
        private final Map<KitItem, Integer> lines = new IdentityHashMap<>();
        private final Map<KitItem, KitItem> originals = new IdentityHashMap<>();
        private final List<KitItem> added = new ArrayList<>();
        private final List<Refused> refused = new ArrayList<>();
        private final List<String> remarks = new ArrayList<>();
        private final Map<KitColumn, Integer> columns = new HashMap<>();

        Reading(Event event, SourceTable table, String usualKit) {
            this.event = event;
            this.table = table;
            this.usualKit = usualKit;
            copier.copyAll(event.getKits()).forEach(kits::add);
            copier.copyReferences();
            copier.forEach((original, copy) -> {
                if (original instanceof KitItem item) {
                    originals.put((KitItem) copy, item);
                }
            });
        }

        KitImport run() {
            for (int i = 0; i < table.columns().size(); i++) {
                Optional<KitColumn> column = KitColumn.named(table.columns().get(i));
                int at = i;
                column.ifPresentOrElse(known -> columns.putIfAbsent(known, at),
                        () -> remarks.add(TEXTS.text("import.column", "column", table.columns().get(at))));
            }
            if (!columns.containsKey(KitColumn.ITEM) && !columns.containsKey(KitColumn.ID)) {
                refused.add(new Refused(1, TEXTS.text("import.noItem", "columns", Stream.of(KitColumn.values()).map(KitColumn::heading)
                        .toList())));
                return result();
            }
            table.rows().forEach(row -> judged(row, () -> item(row)));
            table.rows().forEach(row -> judged(row, () -> spare(row)));
            serials();
            circles();
            return result();
        }

        private void judged(SourceTable.Row row, Runnable reading) {
            try {
                reading.run();
            } catch (IllegalArgumentException e) {
                if (refused.stream().noneMatch(before -> before.line() == row.line())) {
                    refused.add(new Refused(row.line(), e.getMessage()));
                }
            }
        }

        private String cell(SourceTable.Row row, KitColumn column) {
            return columns.containsKey(column) ? row.values().get(columns.get(column)).strip() : "";
        }

        private void item(SourceTable.Row row) {
            KitItem item = meant(row);
            Integer before = lines.put(item, row.line());
            if (before != null) {
                throw new IllegalArgumentException(TEXTS.text("import.twice", "item", cell(row, KitColumn.ITEM), "line", before));
            }
            for (KitColumn column : KitColumn.values()) {
                boolean sameName = column == KitColumn.ITEM && sameWord(item.getName(), cell(row, column));
                if (!cell(row, column).isEmpty() && !sameName) {
                    take(column, item, cell(row, column));
                }
            }
        }

        /** Which of the values of a line is wrong is said too. */
        private void take(KitColumn column, KitItem item, String text) {
            try {
                column.take(item, text);
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(TEXTS.text("import.value", "column", column.heading(), "why", e.getMessage()), e);
            }
        }

        private KitItem meant(SourceTable.Row row) {
            String id = cell(row, KitColumn.ID);
            String name = cell(row, KitColumn.ITEM);
            Optional<KitItem> byId = items().filter(item -> !id.isEmpty() && id.equals(item.getId())).findFirst();
            if (byId.isPresent()) {
                return byId.get();
            }
            if (name.isEmpty()) {
                throw new IllegalArgumentException(id.isEmpty() ? TEXTS.text("import.nameless") : TEXTS.text("import.unknownId", "id", id));
            }
            Kit kit = kit(cell(row, KitColumn.KIT));
            return kit.getItems().stream().filter(item -> sameWord(item.getName(), name)).findFirst().orElseGet(() -> {
                KitItem fresh = Fresh.kitItem();
                fresh.setName(name);
                kit.getItems().add(fresh);
                added.add(fresh);
                return fresh;
            });
        }

        private Stream<KitItem> items() {
            return kits.stream().flatMap(kit -> kit.getItems().stream());
        }

        private Kit kit(String named) {
            String name = named.isEmpty() ? usualKit : named;
            return kits.stream().filter(kit -> sameWord(kit.getName(), name)).findFirst().orElseGet(() -> {
                Kit fresh = Fresh.kit();
                fresh.setName(name);
                kits.add(fresh);
                return fresh;
            });
        }

        private void spare(SourceTable.Row row) {
            String named = cell(row, KitColumn.SPARE_FOR);
            KitItem item = lines.entrySet().stream().filter(entry -> entry.getValue() == row.line()).map(Map.Entry::getKey).findFirst()
                    .orElse(null);
            if (named.isEmpty() || item == null) {
                return;
            }
            KitItem original = named.equals("-") ? null : ((Kit) item.eContainer()).getItems().stream()
                    .filter(other -> sameWord(other.getName(), named) || named.equals(other.getId())).findFirst()
                    .or(() -> items().filter(other -> named.equals(other.getId())).findFirst())
                    .orElseThrow(() -> new IllegalArgumentException(TEXTS.text("import.noSuchSpare", "item", named)));
            if (original == item) {
                throw new IllegalArgumentException(TEXTS.text("import.ownSpare", "item", named));
            }
            item.setSpareFor(original);
        }

        private void serials() {
            Map<String, KitItem> seen = new HashMap<>();
            items().forEach(item -> {
                String serial = item.getSerial() == null ? "" : item.getSerial().strip().toLowerCase(Locale.ROOT);
                KitItem other = serial.isEmpty() ? null : seen.putIfAbsent(serial, item);
                if (other != null && (lines.containsKey(item) || lines.containsKey(other))) {
                    refused.add(new Refused(lines.getOrDefault(item, lines.getOrDefault(other, 0)), TEXTS.text("import.serial", "serial",
                            item.getSerial().strip(), "one", String.valueOf(other.getName()), "other", String.valueOf(item.getName()))));
                }
            });
        }

        /** Things that need themselves, each other, or nothing but things in such a ring. */
        private void circles() {
            for (Kit kit : kits) {
                Map<Gear, KitItem> gear = Inventory.gear(kit.getItems());
                Circles.in(List.copyOf(gear.keySet())).stream().map(gear::get).filter(lines::containsKey)
                        .forEach(item -> refused.add(new Refused(lines.get(item), TEXTS.text("import.circle", "item", item.getName()))));
            }
        }

        private static boolean sameWord(String one, String other) {
            return one != null && one.strip().equalsIgnoreCase(other.strip());
        }

        private KitImport result() {
            Map<KitItem, KitItem> changed = new HashMap<>();
            lines.keySet().forEach(copy -> {
                KitItem original = originals.get(copy);
                if (original != null && differing(original, copy).findAny().isPresent()) {
                    changed.put(original, copy);
                }
            });
            refused.sort((one, other) -> Integer.compare(one.line(), other.line()));
            return new KitImport(event, added, changed, lines.size() - added.size() - changed.size(), refused, remarks);
        }
    }
}
