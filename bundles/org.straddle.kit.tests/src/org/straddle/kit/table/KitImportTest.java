package org.straddle.kit.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.eclipse.emf.edit.provider.ComposedAdapterFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.exchange.ReadException;
import org.straddle.model.Chemistry;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.FunctionKind;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Role;
import org.straddle.model.StraddleFactory;
import org.straddle.model.WorkMode;

class KitImportTest {

    private final Event event = Fresh.event("Midsummer");
    private final Kit kit = Fresh.kit();
    private final EditingDomain domain = new AdapterFactoryEditingDomain(
            new ComposedAdapterFactory(ComposedAdapterFactory.Descriptor.Registry.INSTANCE), new BasicCommandStack());

    @BeforeEach
    void oneKit() {
        kit.setName("South");
        event.getKits().add(kit);
        item("Radio", Role.RADIO).setSerial("A7");
        item("Battery", Role.POWER).setWeightKg(2.9);
    }

    @Test
    void linesMakeAndChangeItems() throws Exception {
        KitImport found = read("""
                item,kit,count,role,weight kg,spare for,modes,stores Wh,chemistry,does
                battery,South,,,3.5,,,,,
                Second radio,South,2,radio,"1,5",Radio,"fm, linear",,,transmit: 2m 70cm; power = 12 V
                Lamp,North,1,comfort,0.2,,,12,lithium-ion,
                """);
        assertEquals(List.of(), found.refused());
        assertEquals("2 added, 1 changed, 0 known", told(found));
        domain.getCommandStack().execute(found.command(domain));
        assertEquals(3.5, named("Battery").getWeightKg());
        KitItem second = named("Second radio");
        assertEquals(2, second.getCount());
        assertEquals(1.5, second.getWeightKg());
        assertSame(named("Radio"), second.getSpareFor());
        assertEquals(List.of(WorkMode.FM, WorkMode.LINEAR), second.getModes());
        assertEquals(FunctionKind.TRANSMIT, second.getFunctions().get(0).getKind());
        assertEquals(Chemistry.LITHIUM_ION, named("Lamp").getChemistry());
        assertEquals("North", ((Kit) named("Lamp").eContainer()).getName());
        domain.getCommandStack().undo();
        assertEquals(1, event.getKits().size());
        assertEquals(2, kit.getItems().size());
        assertEquals(2.9, named("Battery").getWeightKg());
    }

    /** Each is found, said with its line, and nothing can be changed. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            item,weightKg~Lamp,-1                    | 2: weightKg: -1 is below zero.
            item,count~Lamp,1~Rope,x                 | 3: count: “x” is no count from 0 to 9999.
            item,count~Lamp,-2                       | 2: count: “-2” is no count from 0 to 9999.
            item,weightKg~Lamp,1e400                 | 2: weightKg: “1e400” is no number such as 2.5.
            item,serial~Lamp,b1~Rope,B1              | 3: “Lamp” and “Rope” both have the serial number B1.
            item,serial~Lamp,a7                      | 2: “Radio” and “Lamp” both have the serial number a7.
            item,spareFor~Lamp,Lamp                  | 2: “Lamp” cannot stand in for itself.
            item,spareFor~Lamp,Candle                | 2: It is to stand in for “Candle”, and its kit has no such item.
            item,role~Lamp,lighthouse                | 2: role: “lighthouse” is none of these: radio, antenna, feedline, power, computer, recorder, navigation, audio, safety, tool and comfort.
            item,does,needs~Plug,adapter,adapter     | 2: “Plug” never works: what it needs comes only from itself, or from things that need it in turn.
            item,does,needs~One,adapter,support~Two,support,adapter | 2: “One” never works: what it needs comes only from itself, or from things that need it in turn.; 3: “Two” never works: what it needs comes only from itself, or from things that need it in turn.
            item,count~Lamp,1~lamp,2                 | 3: “lamp” stands in line 2 already.
            item,count~,2                            | 2: The line names no item.
            id,count~nobody,2                        | 2: No item has the id nobody, and the line names no item to make.
            item,packedAt~Lamp,yesterday             | 2: packedAt: “yesterday” is no time in UTC such as 2027-06-18T08:00:00Z.
            """)
    void whatIsWrongIsSaidWithItsLine(String table, String said) throws Exception {
        Event before = EcoreUtil.copy(event);
        KitImport found = read(table.replace("~", "\n") + "\n");
        assertEquals(said, found.refused().stream().map(refused -> refused.line() + ": " + refused.why()).collect(Collectors.joining("; ")));
        assertThrows(IllegalStateException.class, () -> found.command(domain));
        assertTrue(EcoreUtil.equals(before, event), "nothing changed");
    }

    @Test
    void aTableWithoutItemsSaysWhatColumnsAreCalled() throws Exception {
        KitImport found = read("thing,how many\nLamp,1\n");
        assertEquals(1, found.refused().size());
        assertTrue(found.refused().get(0).why().startsWith("No column is called item or id. The columns are called: id, kit, item,"));
    }

    @ParameterizedTest
    @ValueSource(strings = { ",", ";", "\t", "|" })
    void separators(String separator) throws Exception {
        KitImport found = read("item,count,note\nLamp,3,dim\n".replace(",", separator));
        assertEquals("1 added, 0 changed, 0 known", told(found));
        assertEquals(3, found.added().get(0).getCount());
    }

    @ParameterizedTest
    @ValueSource(strings = { "UTF-8", "UTF-16", "UTF-16LE+", "windows-1252" })
    void encodings(String charset) throws Exception {
        String text = "item,count\nLämpchen,3\n";
        byte[] bytes = charset.endsWith("+") ? ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE) : text.getBytes(Charset.forName(charset));
        KitImport found = KitImport.into(event, KitFile.read("kit.csv", bytes), "kit");
        assertEquals("Lämpchen", found.added().get(0).getName());
    }

    @Test
    void aSeparatorLineOfASpreadsheetIsSkippedAndLinesStayRight() throws Exception {
        KitImport found = read("sep=;\nitem;weightKg\nLamp;2,5\nRope;-1\n");
        assertEquals(4, found.refused().get(0).line());
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "\u0000\u0001\u0002", "item,count\nLamp,1,2,3,4\n", "item\n", "item,item\nLamp,Rope\n" })
    void whatIsNoTableIsRefused(String text) {
        assertThrows(ReadException.class, () -> read(text));
    }

    /** What a phone sends: only ticks, by id; a hyphen clears one. */
    @Test
    void ticksOfAPhone() throws Exception {
        KitItem battery = named("Battery");
        battery.setChecked(StraddleFactory.eINSTANCE.createTick());
        KitImport found = read("id,packedBy,packedAt,checkedBy,checkedAt\n" + battery.getId() + ",\"'=Ann\",2031-06-20T20:15:00Z,,-\n");
        assertEquals(List.of(), found.refused());
        domain.getCommandStack().execute(found.command(domain));
        assertEquals("=Ann", battery.getTick().getBy());
        assertEquals(Instant.parse("2031-06-20T20:15:00Z"), battery.getTick().getAt());
        assertNull(battery.getChecked());
        assertEquals(2.9, battery.getWeightKg());
    }

    @Test
    void whatIsWrittenIsReadBackAsKnown() throws Exception {
        named("Battery").setNote("=SUM(A1); \"quoted\",\nsecond line");
        named("Battery").setSpareFor(named("Radio"));
        named("Radio").setDuplex(true);
        named("Radio").getModes().add(WorkMode.DATA);
        String text = KitFile.write(kit.getItems());
        KitImport found = KitImport.into(event, KitFile.read("kit.csv", text.getBytes(StandardCharsets.UTF_8)), "other");
        assertEquals(List.of(), found.refused());
        assertEquals("0 added, 0 changed, 2 known", told(found));
    }

    @ParameterizedTest
    @EnumSource(KitTemplate.class)
    void templatesAreTablesWithoutAMistake(KitTemplate template) {
        KitImport found = KitImport.into(Fresh.event("new"), template.table(), "kit");
        assertEquals(List.of(), found.refused());
        assertEquals(List.of(), found.remarks());
        assertFalse(found.added().isEmpty());
    }

    private KitImport read(String text) throws ReadException {
        return KitImport.into(event, KitFile.read("kit.csv", text.getBytes(StandardCharsets.UTF_8)), "kit");
    }

    private static String told(KitImport found) {
        return found.added().size() + " added, " + found.changed().size() + " changed, " + found.known() + " known";
    }

    private KitItem named(String name) {
        return event.getKits().stream().flatMap(each -> each.getItems().stream()).filter(item -> name.equals(item.getName())).findFirst()
                .orElseThrow();
    }

    private KitItem item(String name, Role role) {
        KitItem item = Fresh.kitItem(name, role);
        kit.getItems().add(item);
        return item;
    }
}
