package org.straddle.ui.editors;

import java.util.List;
import java.util.stream.Stream;

import org.straddle.model.Chemistry;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.KitSource;
import org.straddle.model.Role;
import org.straddle.model.SafetyUse;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Team;
import org.straddle.model.WorkMode;
import org.straddle.model.naming.Naming;
import org.straddle.ui.fields.Consumables;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.ItemFunctions;
import org.straddle.ui.fields.Listed;
import org.straddle.ui.fields.Notation;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.TableField;
import org.straddle.ui.fields.Words;
import org.straddle.words.Catalogue;

/** The pieces of gear that go together, edited as a table. */
public final class KitEditor extends ThingEditor<Kit> implements Revealing {

    private static final Catalogue TEXTS = Catalogue.of(KitEditor.class);

    /** Pixels, for about five lines: low, so that the items below are in sight with it, or nothing could be dragged. */
    private static final int PLACES_HEIGHT = 120;

    private TableField<KitItem> items;
    private ItemPlaces places;

    public KitEditor() {
        super(Kit.class);
    }

    @Override
    void fields(FieldForm form, Kit kit) {
        form.section(TEXTS.text("kitEditor.section.kit"), "");
        form.text(TEXTS.text("kitEditor.name"), "", Words.required(TEXTS.text("kitEditor.name.required")), kit, Literals.KIT__NAME);
        form.choice(TEXTS.text("kitEditor.source"), KitSource.VALUES, kit, Literals.KIT__SOURCE);
        form.told(TEXTS.text("kitEditor.weight"), () -> TEXTS.text("kitEditor.weight.told",
                "kg", Numbers.plain(tenths(kit.getItems().stream().mapToDouble(item -> item.getCount() * item.getWeightKg()).sum()))));
        form.told(TEXTS.text("kitEditor.storedEnergy"), () -> TEXTS.text("kitEditor.storedEnergy.told",
                "wh", Numbers.plain(tenths(kit.getItems().stream().mapToDouble(item -> item.getCount() * item.getStoresWh()).sum()))));

        form.section(TEXTS.text("kitEditor.section.places"), TEXTS.text("kitEditor.section.places.description"));
        form.own(parent -> {
            places = new ItemPlaces(form, parent, kit);
            return places.control();
        }, () -> places.refresh(), PLACES_HEIGHT);

        form.wide(TEXTS.text("kitEditor.section.items"), TEXTS.text("kitEditor.section.items.description"));
        items = form.<KitItem>table(kit, Literals.KIT__ITEMS, Fresh::kitItem, 16)
                .column(TEXTS.text("kitEditor.column.name"), 190, Literals.KIT_ITEM__NAME, Words.required(TEXTS.text("kitEditor.column.name.required")))
                .choice(TEXTS.text("kitEditor.column.role"), 95, Literals.KIT_ITEM__ROLE, Role.VALUES)
                .column(TEXTS.text("kitEditor.column.modes"), 95, Literals.KIT_ITEM__MODES, Listed.of(mode()))
                .check(TEXTS.text("kitEditor.column.needed"), 80, Literals.KIT_ITEM__NEEDED)
                .optionsOf(TEXTS.text("kitEditor.column.standsInFor"), 150, Literals.KIT_ITEM__SPARE_FOR, KitEditor::replaceable, KitEditor::word)
                .column(TEXTS.text("kitEditor.column.count"), 65, Literals.KIT_ITEM__COUNT, Numbers.whole(0, 9999))
                .column(TEXTS.text("kitEditor.column.kgEach"), 80, Literals.KIT_ITEM__WEIGHT_KG, Numbers.between(0, 1000))
                .column(TEXTS.text("kitEditor.column.storesWh"), 100, Literals.KIT_ITEM__STORES_WH, Numbers.between(0, 100_000))
                .column(TEXTS.text("kitEditor.column.drawsW"), 85, Literals.KIT_ITEM__DRAWS_W, Numbers.between(0, 10_000))
                .column(TEXTS.text("kitEditor.column.transmitDrawsW"), 130, Literals.KIT_ITEM__TRANSMIT_DRAWS_W, Numbers.between(0, 10_000))
                .column(TEXTS.text("kitEditor.column.receiveDrawsW"), 130, Literals.KIT_ITEM__RECEIVE_DRAWS_W, Numbers.between(0, 10_000))
                .column(TEXTS.text("kitEditor.column.idleDrawsW"), 120, Literals.KIT_ITEM__IDLE_DRAWS_W, Numbers.between(0, 10_000))
                .column(TEXTS.text("kitEditor.column.transmitsW"), 110, Literals.KIT_ITEM__TRANSMITS_W, Numbers.between(0, 10_000))
                .column(TEXTS.text("kitEditor.column.gainDbi"), 85, Literals.KIT_ITEM__GAIN_DBI, Numbers.between(-30, 60))
                .column(TEXTS.text("kitEditor.column.raisedM"), 90, Literals.KIT_ITEM__RAISED_M, Numbers.between(0, 100))
                .column(TEXTS.text("kitEditor.column.functions"), 170, Literals.KIT_ITEM__FUNCTIONS, new ItemFunctions())
                .column(TEXTS.text("kitEditor.column.needs"), 150, Literals.KIT_ITEM__NEEDS, new ItemFunctions())
                .check(TEXTS.text("kitEditor.column.duplex"), 80, Literals.KIT_ITEM__DUPLEX)
                .choice(TEXTS.text("kitEditor.column.chemistry"), 140, Literals.KIT_ITEM__CHEMISTRY, Chemistry.VALUES)
                .column(TEXTS.text("kitEditor.column.ageYears"), 90, Literals.KIT_ITEM__AGE_YEARS, Numbers.between(0, 100))
                .column(TEXTS.text("kitEditor.column.consumables"), 150, Literals.KIT_ITEM__CONSUMABLES, new Consumables())
                .choice(TEXTS.text("kitEditor.column.safetyUse"), 140, Literals.KIT_ITEM__SAFETY_USE, SafetyUse.VALUES)
                .column(TEXTS.text("kitEditor.column.vestClass"), 85, Literals.KIT_ITEM__VEST_CLASS, Numbers.whole(0, 3))
                .column(TEXTS.text("kitEditor.column.tapeM"), 70, Literals.KIT_ITEM__TAPE_M, Numbers.between(0, 10_000))
                .column(TEXTS.text("kitEditor.column.waterLitres"), 75, Literals.KIT_ITEM__WATER_LITRES, Numbers.between(0, 1000))
                .column(TEXTS.text("kitEditor.column.price"), 75, Literals.KIT_ITEM__PRICE, Numbers.between(0, 1_000_000))
                .column(TEXTS.text("kitEditor.column.bag"), 100, Literals.KIT_ITEM__BAG, Words.any())
                .column(TEXTS.text("kitEditor.column.serial"), 100, Literals.KIT_ITEM__SERIAL, Words.any())
                .column(TEXTS.text("kitEditor.column.owner"), 110, Literals.KIT_ITEM__OWNER, Words.any())
                .options(TEXTS.text("kitEditor.column.lentTo"), 110, Literals.KIT_ITEM__LENT_TO, () -> teams(kit), KitEditor::word)
                .column(TEXTS.text("kitEditor.column.note"), 160, Literals.KIT_ITEM__NOTE, Words.any());
        places.take(items.viewer());
    }

    @Override
    public void reveal(Identified part) {
        items.select(part);
    }

    /** Nothing, what is entered, and the others of its kit with its role. */
    private static List<KitItem> replaceable(KitItem item) {
        Stream<KitItem> alike = item.eContainer() instanceof Kit kit ? kit.getItems().stream()
                .filter(other -> other != item && other.getRole() == item.getRole()) : Stream.of();
        return Stream.of(Stream.of((KitItem) null), Stream.ofNullable(item.getSpareFor()), alike).flatMap(each -> each).distinct()
                .toList();
    }

    private static List<Team> teams(Kit kit) {
        return Stream.concat(Stream.of((Team) null),
                kit.eContainer() instanceof Event event ? event.getTeams().stream() : Stream.empty()).toList();
    }

    private static String word(Identified item) {
        return item == null ? "" : Naming.name(item);
    }

    private static Notation<WorkMode> mode() {
        return new Notation<>() {
            @Override
            public String print(WorkMode mode) {
                return mode.getLiteral();
            }

            @Override
            public WorkMode parse(String text) {
                return WorkMode.VALUES.stream().filter(mode -> mode.getLiteral().equalsIgnoreCase(text)).findFirst()
                        .orElseThrow(() -> new IllegalArgumentException(
                                TEXTS.text("kitEditor.modes.wrong")));
            }
        };
    }

    private static double tenths(double value) {
        return Math.rint(value * 10) / 10;
    }
}
