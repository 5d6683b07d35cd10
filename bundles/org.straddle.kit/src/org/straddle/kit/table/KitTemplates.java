package org.straddle.kit.table;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.exchange.CsvCell;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.model.Event;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Team;
import org.straddle.words.Catalogue;

/**
 * Kits to begin with: those that come with the program, and those of the user's own, one table for each in a folder.
 *
 * @param folder need not be there yet
 */
public record KitTemplates(Path folder) {

    private static final Catalogue TEXTS = Catalogue.of(KitTemplates.class);

    /** System property that the start scripts set: the user's folder for what is of no event. */
    private static final String STATE = "straddle.state";
    private static final String ENDING = ".csv";
    private static final int LONGEST_NAME = 60;

    /** Those of the user, the same in the window and on the command line. */
    public static KitTemplates ofUser() {
        Path usual = Path.of(System.getProperty("user.home"), ".local", "state", "straddle");
        return new KitTemplates(Path.of(System.getProperty(STATE, usual.toString()), "templates"));
    }

    /**
     * One of them.
     *
     * @param name one word for those of the program; the user's own as they were named
     * @param label the name, or what a template of the program is for
     * @param table with a name of its own; what is in it goes to one kit
     */
    public record Template(String name, String label, SourceTable table) {

        /** As a table that can be edited and read back. */
        public String csv() {
            StringWriter text = new StringWriter();
            try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180.builder().setRecordSeparator('\n').get())) {
                printer.printRecord(table.columns());
                for (SourceTable.Row row : table.rows()) {
                    printer.printRecord(row.values().stream().map(CsvCell::of));
                }
            } catch (IOException impossible) {
                throw new UncheckedIOException(impossible);
            }
            return text.toString();
        }

        /** The table without what would scatter its items over other kits, or hold them for items of the event. */
        private SourceTable forOneKit() {
            List<Integer> blank = Stream.of(KitColumn.KIT, KitColumn.ID).map(column -> table.columns().indexOf(column.heading())).toList();
            return new SourceTable(table.name(), table.columns(), table.rows().stream().map(row -> {
                List<String> values = new ArrayList<>(row.values());
                blank.stream().filter(at -> at >= 0).forEach(at -> values.set(at, ""));
                return new SourceTable.Row(row.line(), values);
            }).toList(), table.remarks());
        }

        /**
         * A new kit of the event that a team takes along. One undo.
         *
         * @param name of no kit of the event
         * @throws ReadException when a line of a table of the user's own is wrong
         */
        public Command command(EditingDomain domain, Event event, Team team, String name) throws ReadException {
            KitImport found = KitImport.into(event, forOneKit(), name);
            if (!found.refused().isEmpty() || found.added().isEmpty()) {
                int line = found.refused().isEmpty() ? 0 : found.refused().get(0).line();
                throw new ReadException(table.name(), line, found.refused().isEmpty() ? TEXTS.text("templates.nothing")
                        : found.refused().get(0).why(), TEXTS.text("templates.correct"));
            }
            Kit kit = (Kit) found.added().get(0).eContainer();
            CompoundCommand all = new CompoundCommand(TEXTS.text("templates.new", "kit", name));
            all.append(found.command(domain));
            all.append(AddCommand.create(domain, team, Literals.TEAM__KITS, kit));
            return all;
        }
    }

    /** The user's own first, by name; those that cannot be read are left out. */
    public List<Template> all() {
        List<Template> all = new ArrayList<>();
        for (Path file : files()) {
            try {
                String name = file.getFileName().toString();
                String own = name.substring(0, name.length() - ENDING.length());
                all.add(new Template(own, own, KitFile.read(file)));
            } catch (ReadException unreadable) {
                // left out: whoever put it there is told when it is brought in as a table
            }
        }
        Stream.of(KitTemplate.values()).forEach(template -> all.add(new Template(template.word(), template.label(), template.table())));
        return all;
    }

    /** The user's own before one of the program that is called the same. */
    public Optional<Template> named(String name) {
        return all().stream().filter(template -> template.name().equalsIgnoreCase(name.strip())).findFirst();
    }

    private List<Path> files() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().endsWith(ENDING)).sorted().toList();
        } catch (IOException none) {
            return List.of();
        }
    }

    /** Why a template cannot be called so, a sentence; empty when it can. */
    public static String problem(String name) {
        return name.isBlank() || name.length() > LONGEST_NAME || !name.strip().matches("[\\p{L}\\p{N}][\\p{L}\\p{N} ._()+-]*")
                ? TEXTS.text("templates.name", "most", LONGEST_NAME) : "";
    }

    public boolean has(String name) {
        return Files.exists(file(name));
    }

    /** Where a template of this name is kept. */
    public Path file(String name) {
        return folder.resolve(name.strip() + ENDING);
    }

    /**
     * Keeps a kit as a template, in place of one of the same name. Ticks, serial numbers, owners and loans stay behind: they are
     * of these pieces.
     */
    public void save(String name, Kit kit) throws IOException {
        Files.createDirectories(folder);
        Path half = Files.createTempFile(folder, "template", ".part");
        Files.writeString(half, KitFile.write(List.copyOf(bare(kit.getItems()))), StandardCharsets.UTF_8);
        Files.move(half, file(name), StandardCopyOption.REPLACE_EXISTING);
    }

    private static Collection<KitItem> bare(List<KitItem> items) {
        Collection<KitItem> copies = EcoreUtil.copyAll(items);
        for (KitItem copy : copies) {
            List.of(Literals.KIT_ITEM__TICK, Literals.KIT_ITEM__CHECKED, Literals.KIT_ITEM__TESTED_ON_AIR, Literals.KIT_ITEM__RETURNED,
                    Literals.KIT_ITEM__IN_CAR, Literals.KIT_ITEM__SERIAL, Literals.KIT_ITEM__OWNER, Literals.KIT_ITEM__LENT_TO).forEach(copy::eUnset);
            copy.setId("");
        }
        return Collections.unmodifiableCollection(copies);
    }
}
