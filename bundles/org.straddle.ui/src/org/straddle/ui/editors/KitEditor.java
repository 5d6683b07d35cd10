package org.straddle.ui.editors;

import java.util.List;
import java.util.stream.Stream;

import org.straddle.model.Fresh;
import org.straddle.model.Identified;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.Role;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.WorkMode;
import org.straddle.model.naming.Naming;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Listed;
import org.straddle.ui.fields.Notation;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.TableField;
import org.straddle.ui.fields.Words;
import org.straddle.words.Catalogue;

/** The pieces of gear that go together, edited as a table. */
public final class KitEditor extends ThingEditor<Kit> implements Revealing {

    private static final Catalogue TEXTS = Catalogue.of(KitEditor.class);

    private TableField<KitItem> items;

    public KitEditor() {
        super(Kit.class);
    }

    @Override
    void fields(FieldForm form, Kit kit) {
        form.section(TEXTS.text("kitEditor.section.kit"), "");
        form.text(TEXTS.text("kitEditor.name"), "", Words.required(TEXTS.text("kitEditor.name.required")), kit, Literals.KIT__NAME);
        form.section(TEXTS.text("kitEditor.section.together"), "");
        form.told(TEXTS.text("kitEditor.weight"), () -> TEXTS.text("kitEditor.weight.told",
                "kg", Numbers.plain(tenths(kit.getItems().stream().mapToDouble(item -> item.getCount() * item.getWeightKg()).sum()))));
        form.told(TEXTS.text("kitEditor.storedEnergy"), () -> TEXTS.text("kitEditor.storedEnergy.told",
                "wh", Numbers.plain(tenths(kit.getItems().stream().mapToDouble(item -> item.getCount() * item.getStoresWh()).sum()))));

        form.wide(TEXTS.text("kitEditor.section.items"), TEXTS.text("kitEditor.section.items.description"));
        items = form.<KitItem>table(kit, Literals.KIT__ITEMS, Fresh::kitItem, 16)
                .column(TEXTS.text("kitEditor.column.name"), 190, Literals.KIT_ITEM__NAME, Words.required(TEXTS.text("kitEditor.column.name.required")))
                .choice(TEXTS.text("kitEditor.column.role"), 95, Literals.KIT_ITEM__ROLE, Role.VALUES)
                .column(TEXTS.text("kitEditor.column.modes"), 95, Literals.KIT_ITEM__MODES, Listed.of(mode()))
                .check(TEXTS.text("kitEditor.column.needed"), 80, Literals.KIT_ITEM__NEEDED)
                .options(TEXTS.text("kitEditor.column.standsInFor"), 150, Literals.KIT_ITEM__SPARE_FOR, () -> others(kit), KitEditor::word)
                .column(TEXTS.text("kitEditor.column.count"), 65, Literals.KIT_ITEM__COUNT, Numbers.whole(0, 9999))
                .column(TEXTS.text("kitEditor.column.kgEach"), 80, Literals.KIT_ITEM__WEIGHT_KG, Numbers.between(0, 1000))
                .column(TEXTS.text("kitEditor.column.storesWh"), 100, Literals.KIT_ITEM__STORES_WH, Numbers.between(0, 100_000))
                .column(TEXTS.text("kitEditor.column.drawsW"), 85, Literals.KIT_ITEM__DRAWS_W, Numbers.between(0, 10_000))
                .column(TEXTS.text("kitEditor.column.transmitsW"), 110, Literals.KIT_ITEM__TRANSMITS_W, Numbers.between(0, 10_000))
                .column(TEXTS.text("kitEditor.column.gainDbi"), 85, Literals.KIT_ITEM__GAIN_DBI, Numbers.between(-30, 60))
                .column(TEXTS.text("kitEditor.column.raisedM"), 90, Literals.KIT_ITEM__RAISED_M, Numbers.between(0, 100))
                .column(TEXTS.text("kitEditor.column.note"), 160, Literals.KIT_ITEM__NOTE, Words.any());
    }

    @Override
    public void reveal(Identified part) {
        items.select(part);
    }

    private static List<KitItem> others(Kit kit) {
        return Stream.concat(Stream.of((KitItem) null), kit.getItems().stream()).toList();
    }

    private static String word(KitItem item) {
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
