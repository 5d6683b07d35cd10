package org.straddle.kit.table;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import org.straddle.model.Consumable;
import org.straddle.model.StraddleFactory;
import org.straddle.words.Catalogue;

/** What one piece of an item uses up: {@code 4 x AA cell; 1 x 5 A fuse}. */
public final class ConsumableText {

    private static final Catalogue TEXTS = Catalogue.of(ConsumableText.class);
    private static final Pattern COUNTED = Pattern.compile("(\\d{1,4})\\s*[x×*]\\s*(.+)");

    private ConsumableText() {
    }

    public static String print(List<Consumable> consumables) {
        return consumables.stream().map(each -> each.getCount() + " × " + (each.getName() == null ? "" : each.getName().strip()))
                .collect(Collectors.joining("; "));
    }

    /** @throws IllegalArgumentException says in a sentence what is wrong */
    public static List<Consumable> parse(String text) {
        List<Consumable> consumables = new ArrayList<>();
        for (String part : text.split(";")) {
            if (!part.isBlank()) {
                Matcher counted = COUNTED.matcher(part.strip());
                if (!counted.matches()) {
                    throw new IllegalArgumentException(TEXTS.text("consumables.wrong", "text", part.strip()));
                }
                Consumable consumable = StraddleFactory.eINSTANCE.createConsumable();
                consumable.setCount(Integer.parseInt(counted.group(1)));
                consumable.setName(counted.group(2).strip());
                consumables.add(consumable);
            }
        }
        return consumables;
    }
}
