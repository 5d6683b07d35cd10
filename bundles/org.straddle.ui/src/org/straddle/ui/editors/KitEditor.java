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
import org.straddle.outlook.things.ThingText;
import org.straddle.ui.fields.FieldForm;
import org.straddle.ui.fields.Listed;
import org.straddle.ui.fields.Notation;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.fields.TableField;
import org.straddle.ui.fields.Words;

/** The pieces of gear that go together, edited as a table. */
public final class KitEditor extends ThingEditor<Kit> implements Revealing {

    private TableField<KitItem> items;

    public KitEditor() {
        super(Kit.class);
    }

    @Override
    void fields(FieldForm form, Kit kit) {
        form.section("Kit", "");
        form.text("Name", "", Words.required("Enter the kit's name."), kit, Literals.KIT__NAME);
        form.section("Together", "");
        form.told("Weight", () -> Numbers.plain(tenths(kit.getItems().stream()
                .mapToDouble(item -> item.getCount() * item.getWeightKg()).sum())) + " kg");
        form.told("Stored energy", () -> Numbers.plain(tenths(kit.getItems().stream()
                .mapToDouble(item -> item.getCount() * item.getStoresWh()).sum())) + " Wh");

        form.wide("Items", "An item that is needed stops its modes of work when it fails, unless another stands in."
                + " No mode means every mode.");
        items = form.<KitItem>table(kit, Literals.KIT__ITEMS, "item", Fresh::kitItem, 16)
                .column("Name", 190, Literals.KIT_ITEM__NAME, Words.required("Enter the item's name."))
                .choice("Role", 95, Literals.KIT_ITEM__ROLE, Role.VALUES)
                .column("Modes", 95, Literals.KIT_ITEM__MODES, Listed.of(mode()))
                .check("Needed", 80, Literals.KIT_ITEM__NEEDED)
                .options("Stands in for", 150, Literals.KIT_ITEM__SPARE_FOR, () -> others(kit), KitEditor::word)
                .column("Count", 65, Literals.KIT_ITEM__COUNT, Numbers.whole(0, 9999))
                .column("kg each", 80, Literals.KIT_ITEM__WEIGHT_KG, Numbers.between(0, 1000))
                .column("Stores Wh", 100, Literals.KIT_ITEM__STORES_WH, Numbers.between(0, 100_000))
                .column("Draws W", 85, Literals.KIT_ITEM__DRAWS_W, Numbers.between(0, 10_000))
                .column("Note", 160, Literals.KIT_ITEM__NOTE, Words.any());
    }

    @Override
    public void reveal(Identified part) {
        items.select(part);
    }

    private static List<KitItem> others(Kit kit) {
        return Stream.concat(Stream.of((KitItem) null), kit.getItems().stream()).toList();
    }

    private static String word(KitItem item) {
        return item == null ? "" : ThingText.of(item);
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
                                "Enter modes out of fm, linear and data with commas between, or nothing for all."));
            }
        };
    }

    private static double tenths(double value) {
        return Math.rint(value * 10) / 10;
    }
}
