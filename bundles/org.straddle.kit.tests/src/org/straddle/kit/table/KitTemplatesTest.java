package org.straddle.kit.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.exchange.ReadException;
import org.straddle.exchange.sites.SourceTable;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Role;
import org.straddle.model.StraddleFactory;
import org.straddle.model.Team;
import org.straddle.model.provider.StraddleItemProviderAdapterFactory;

class KitTemplatesTest {

    @TempDir
    Path folder;

    private final EditingDomain domain = new AdapterFactoryEditingDomain(new StraddleItemProviderAdapterFactory(), new BasicCommandStack());
    private final Event event = Fresh.event("Midsummer");
    private final Team team = Fresh.team();

    private KitTemplates templates() {
        event.getTeams().add(team);
        return new KitTemplates(folder.resolve("templates"));
    }

    @Test
    void everyTemplateOfTheProgramBecomesOneKitOfTheTeam() throws ReadException {
        List<KitTemplates.Template> all = templates().all();
        assertEquals(KitTemplate.values().length, all.size());
        for (KitTemplates.Template template : all) {
            domain.getCommandStack().execute(template.command(domain, event, team, "My kit"));
            assertEquals(1, event.getKits().size(), template.label());
            assertEquals(event.getKits(), team.getKits());
            assertEquals("My kit", event.getKits().get(0).getName());
            assertEquals(template.table().rows().size(), event.getKits().get(0).getItems().size());
            domain.getCommandStack().undo();
            assertEquals(List.of(), event.getKits());
            assertEquals(List.of(), team.getKits());
        }
    }

    @Test
    void aKitIsKeptWithoutWhatIsOfItsPiecesAndComesBack() throws IOException {
        KitTemplates templates = templates();
        Kit kit = Fresh.kit();
        kit.setName("North, old");
        event.getKits().add(kit);
        KitItem rope = item(kit, "rope, \"thick\"");
        KitItem second = item(kit, "second rope");
        second.setSpareFor(rope);
        rope.setSerial("77");
        rope.setOwner("Q0AAR");
        rope.setLentTo(team);
        rope.setBag("day bag");
        rope.setWeightKg(2.5);
        rope.setTick(StraddleFactory.eINSTANCE.createTick());
        rope.getTick().setBy("Q0AAR");
        rope.getTick().setAt(Instant.parse("2031-06-20T08:05:00Z"));
        assertFalse(templates.has("Rope work"));
        templates.save("Rope work", kit);
        assertTrue(templates.has("Rope work"));
        KitTemplates.Template own = templates.all().get(0);
        assertEquals("Rope work", own.label());
        domain.getCommandStack().execute(own.command(domain, event, team, "South"));
        Kit made = event.getKits().get(1);
        KitItem copy = made.getItems().get(0);
        assertEquals("rope, \"thick\"", copy.getName());
        assertEquals("day bag", copy.getBag());
        assertEquals(2.5, copy.getWeightKg());
        assertSame(copy, made.getItems().get(1).getSpareFor(), "its own rope");
        assertNull(copy.getTick());
        assertNull(copy.getLentTo());
        assertTrue(copy.getSerial() == null || copy.getSerial().isEmpty());
        assertTrue(copy.getOwner() == null || copy.getOwner().isEmpty());
        assertEquals("77", rope.getSerial(), "the kit stays as it is");
        assertEquals("Q0AAR", rope.getTick().getBy());
    }

    private static KitItem item(Kit kit, String name) {
        KitItem item = Fresh.kitItem(name, Role.TOOL);
        kit.getItems().add(item);
        return item;
    }

    @Test
    void aWrongTableIsRefusedWithItsLine() throws IOException {
        KitTemplates templates = templates();
        Files.createDirectories(templates.folder());
        Files.writeString(templates.folder().resolve("bad.csv"), "item,count\nrope,1\nlamp,many\n");
        ReadException refused = assertThrows(ReadException.class, () -> templates.all().get(0).command(domain, event, team, "Kit"));
        assertEquals(3, refused.line());
        assertEquals(List.of(), event.getKits());
    }

    @Test
    void namesThatAFolderCannotHaveAreRefused() {
        for (String bad : List.of("", " ", "../out", "a/b", "a\\b", "a:b", ".hidden", "x".repeat(61))) {
            assertFalse(KitTemplates.problem(bad).isEmpty(), bad);
        }
        assertEquals("", KitTemplates.problem("Rope work (old) 2"));
    }

    /** What is printed can be edited and read back, also where a name would act in a spreadsheet. */
    @Test
    void aTemplateIsFoundByItsNameAndPrintedAsATableThatReadsBack() throws Exception {
        Kit kit = Fresh.kit();
        KitItem item = Fresh.kitItem("=1+1, \"quoted\"", Role.TOOL);
        kit.getItems().add(item);
        templates().save("Roadside", kit);
        KitTemplates.Template own = templates().named(" roadside ").orElseThrow();
        assertEquals("Roadside", own.name(), "before the one of the program");
        SourceTable again = KitFile.read("x.csv", own.csv().getBytes(StandardCharsets.UTF_8));
        KitImport found = KitImport.into(event, again, "back");
        assertEquals(List.of(), found.refused());
        assertEquals(List.of(item.getName()), found.added().stream().map(KitItem::getName).toList());
        assertEquals("station", templates().named("station").orElseThrow().name());
        assertTrue(templates().named("none").isEmpty());
    }
}
