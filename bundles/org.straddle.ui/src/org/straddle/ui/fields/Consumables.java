package org.straddle.ui.fields;

import java.util.List;

import org.straddle.kit.table.ConsumableText;
import org.straddle.model.Consumable;

/** What one piece of an item uses up: {@code 4 x AA cell; 1 x 5 A fuse}. */
public final class Consumables implements Notation<List<Consumable>> {

    @Override
    public String print(List<Consumable> consumables) {
        return ConsumableText.print(consumables);
    }

    @Override
    public List<Consumable> parse(String text) {
        return ConsumableText.parse(text);
    }
}
