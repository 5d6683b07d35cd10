package org.straddle.kit.table;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EReference;
import org.straddle.model.Kit;
import org.straddle.model.KitItem;
import org.straddle.model.StraddleFactory;
import org.straddle.model.StraddlePackage.Literals;
import org.straddle.model.Tick;
import org.straddle.model.WorkMode;
import org.straddle.words.Catalogue;

/**
 * A column of a table of kits. The headings are those that the program writes; how they are spaced and capitalised does not
 * matter. An empty cell leaves an item as it is; a hyphen clears a tick.
 */
public enum KitColumn {
    ID("id", item -> item.getId(), (item, text) -> { }),
    KIT("kit", item -> item.eContainer() instanceof Kit kit ? kit.getName() : "", (item, text) -> { }),
    ITEM("item", KitItem::getName, KitItem::setName),
    COUNT("count", Literals.KIT_ITEM__COUNT),
    ROLE("role", Literals.KIT_ITEM__ROLE),
    MODES("modes", item -> item.getModes().stream().map(WorkMode::getLiteral).collect(Collectors.joining(", ")), KitColumn::modes),
    NEEDED("needed", Literals.KIT_ITEM__NEEDED),
    SPARE_FOR("spareFor", item -> item.getSpareFor() == null ? "" : item.getSpareFor().getName(), (item, text) -> { }),
    WEIGHT("weightKg", Literals.KIT_ITEM__WEIGHT_KG),
    STORES("storesWh", Literals.KIT_ITEM__STORES_WH),
    CHEMISTRY("chemistry", Literals.KIT_ITEM__CHEMISTRY),
    AGE("ageYears", Literals.KIT_ITEM__AGE_YEARS),
    DRAWS("drawsW", Literals.KIT_ITEM__DRAWS_W),
    DRAWS_SENDING("transmitDrawsW", Literals.KIT_ITEM__TRANSMIT_DRAWS_W),
    DRAWS_RECEIVING("receiveDrawsW", Literals.KIT_ITEM__RECEIVE_DRAWS_W),
    DRAWS_WAITING("idleDrawsW", Literals.KIT_ITEM__IDLE_DRAWS_W),
    TRANSMITS("transmitsW", Literals.KIT_ITEM__TRANSMITS_W),
    GAIN("gainDbi", Literals.KIT_ITEM__GAIN_DBI),
    RAISED("raisedM", Literals.KIT_ITEM__RAISED_M),
    GIVES("does", item -> FunctionText.print(item.getFunctions()), (item, text) -> {
        item.getFunctions().clear();
        item.getFunctions().addAll(FunctionText.parse(text));
    }),
    NEEDS("needs", item -> FunctionText.print(item.getNeeds()), (item, text) -> {
        item.getNeeds().clear();
        item.getNeeds().addAll(FunctionText.parse(text));
    }),
    DUPLEX("duplex", Literals.KIT_ITEM__DUPLEX),
    CONSUMABLES("usesUp", item -> ConsumableText.print(item.getConsumables()), (item, text) -> {
        item.getConsumables().clear();
        item.getConsumables().addAll(ConsumableText.parse(text));
    }),
    SAFETY("safetyUse", Literals.KIT_ITEM__SAFETY_USE),
    VEST_CLASS("vestClass", Literals.KIT_ITEM__VEST_CLASS),
    TAPE("tapeM", Literals.KIT_ITEM__TAPE_M),
    WATER("waterLitres", Literals.KIT_ITEM__WATER_LITRES),
    PRICE("price", Literals.KIT_ITEM__PRICE),
    BAG("bag", Literals.KIT_ITEM__BAG),
    OWNER("owner", Literals.KIT_ITEM__OWNER),
    SERIAL("serial", Literals.KIT_ITEM__SERIAL),
    NOTE("note", Literals.KIT_ITEM__NOTE),
    PACKED_BY("packedBy", by(Literals.KIT_ITEM__TICK), setBy(Literals.KIT_ITEM__TICK)),
    PACKED_AT("packedAt", at(Literals.KIT_ITEM__TICK), setAt(Literals.KIT_ITEM__TICK)),
    CHECKED_BY("checkedBy", by(Literals.KIT_ITEM__CHECKED), setBy(Literals.KIT_ITEM__CHECKED)),
    CHECKED_AT("checkedAt", at(Literals.KIT_ITEM__CHECKED), setAt(Literals.KIT_ITEM__CHECKED)),
    TESTED_BY("testedBy", by(Literals.KIT_ITEM__TESTED_ON_AIR), setBy(Literals.KIT_ITEM__TESTED_ON_AIR)),
    TESTED_AT("testedAt", at(Literals.KIT_ITEM__TESTED_ON_AIR), setAt(Literals.KIT_ITEM__TESTED_ON_AIR)),
    RETURNED_BY("returnedBy", by(Literals.KIT_ITEM__RETURNED), setBy(Literals.KIT_ITEM__RETURNED)),
    RETURNED_AT("returnedAt", at(Literals.KIT_ITEM__RETURNED), setAt(Literals.KIT_ITEM__RETURNED));

    private static final Catalogue TEXTS = Catalogue.of(KitColumn.class);

    /** Clears a tick. */
    private static final String CLEAR = "-";

    private final String heading;
    private final Function<KitItem, Object> value;
    private final Function<KitItem, String> print;
    private final BiConsumer<KitItem, String> take;

    KitColumn(String heading, Function<KitItem, String> print, BiConsumer<KitItem, String> take) {
        this(heading, item -> {
            String text = print.apply(item);
            return text == null || text.isEmpty() ? null : text;
        }, print, take);
    }

    private KitColumn(String heading, Function<KitItem, Object> value, Function<KitItem, String> print,
            BiConsumer<KitItem, String> take) {
        this.heading = heading;
        this.value = value;
        this.print = print;
        this.take = take;
    }

    KitColumn(String heading, EAttribute attribute) {
        this(heading, item -> item.eGet(attribute) instanceof Enumerator each ? each.getLiteral() : item.eGet(attribute),
                item -> printed(item.eGet(attribute)), (item, text) -> item.eSet(attribute, parsed(attribute, text)));
    }

    public String heading() {
        return heading;
    }

    /** The same for programs: numbers and truth as such, nothing as null. */
    public Object value(KitItem item) {
        return value.apply(item);
    }

    /** What the column says of an item; empty for what nobody entered. */
    public String print(KitItem item) {
        String text = print.apply(item);
        return text == null ? "" : text;
    }

    /**
     * Takes over what a cell says.
     *
     * @param text not blank
     * @throws IllegalArgumentException says in a sentence what is wrong
     */
    void take(KitItem item, String text) {
        take.accept(item, text.strip());
    }

    /** The column that a heading names; {@code Weight kg} is {@code weightKg}. */
    static Optional<KitColumn> named(String typed) {
        String plain = plain(typed);
        return Stream.of(values()).filter(column -> plain(column.heading).equals(plain)).findFirst()
                .or(() -> plain.equals("name") ? Optional.of(ITEM) : Optional.empty());
    }

    private static String plain(String heading) {
        return heading.replaceAll("[^\\p{L}\\p{N}]+", "").toLowerCase(Locale.ROOT);
    }

    private static String printed(Object value) {
        return value instanceof Double number ? number == 0 ? "" : decimal(number)
                : value instanceof Boolean yes ? yes ? "yes" : "" : value instanceof Enumerator each ? each.getLiteral()
                : value == null ? "" : value.toString();
    }

    private static String decimal(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e15 ? Long.toString((long) number) : Double.toString(number);
    }

    private static Object parsed(EAttribute attribute, String text) {
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (type == double.class) {
            double number = number(text);
            boolean mayBeNegative = attribute == Literals.KIT_ITEM__GAIN_DBI;
            if (!mayBeNegative && number < 0) {
                throw new IllegalArgumentException(TEXTS.text("column.negative", "text", text));
            }
            return number;
        }
        if (type == int.class) {
            if (!text.matches("\\d{1,4}")) {
                throw new IllegalArgumentException(TEXTS.text("column.whole", "text", text));
            }
            return Integer.valueOf(text);
        }
        if (type == boolean.class) {
            return yes(text);
        }
        return attribute.getEAttributeType() instanceof EEnum values ? literal(values, text) : text;
    }

    /** With a point or a comma, as people write it. */
    private static double number(String text) {
        if (!text.matches("[-+]?\\d{1,9}([.,]\\d{1,9})?")) {
            throw new IllegalArgumentException(TEXTS.text("column.number", "text", text));
        }
        return Double.parseDouble(text.replace(',', '.'));
    }

    private static boolean yes(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "true", "1", "x" -> true;
            case "no", "false", "0", CLEAR -> false;
            default -> throw new IllegalArgumentException(TEXTS.text("column.yes", "text", text));
        };
    }

    private static Object literal(EEnum values, String text) {
        return values.getELiterals().stream().filter(each -> plain(each.getLiteral()).equals(plain(text))).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(TEXTS.text("column.oneOf", "text", text, "values",
                        values.getELiterals().stream().map(each -> each.getLiteral()).toList()))).getInstance();
    }

    private static void modes(KitItem item, String text) {
        item.getModes().clear();
        if (!text.equals(CLEAR) && !plain(text).equals("everymode")) {
            Stream.of(text.split("[,;/\\s]+")).filter(part -> !part.isEmpty())
                    .map(part -> (WorkMode) literal(Literals.WORK_MODE, part)).distinct().forEach(item.getModes()::add);
        }
    }

    private static Function<KitItem, String> by(EReference slot) {
        return item -> item.eGet(slot) instanceof Tick tick && tick.getBy() != null ? tick.getBy() : "";
    }

    private static Function<KitItem, String> at(EReference slot) {
        return item -> item.eGet(slot) instanceof Tick tick && tick.getAt() != null ? tick.getAt().toString() : "";
    }

    private static BiConsumer<KitItem, String> setBy(EReference slot) {
        return (item, text) -> {
            if (text.equals(CLEAR)) {
                item.eSet(slot, null);
            } else {
                tick(item, slot).setBy(text);
            }
        };
    }

    private static BiConsumer<KitItem, String> setAt(EReference slot) {
        return (item, text) -> {
            if (text.equals(CLEAR)) {
                item.eSet(slot, null);
                return;
            }
            try {
                tick(item, slot).setAt(Instant.parse(text));
            } catch (DateTimeParseException e) {
                throw new IllegalArgumentException(TEXTS.text("column.instant", "text", text), e);
            }
        };
    }

    private static Tick tick(KitItem item, EReference slot) {
        if (!(item.eGet(slot) instanceof Tick)) {
            item.eSet(slot, StraddleFactory.eINSTANCE.createTick());
        }
        return (Tick) item.eGet(slot);
    }
}
