package org.straddle.ui.fields;

import java.util.List;

import org.straddle.kit.table.FunctionText;
import org.straddle.model.ItemFunction;

/** What an item gives or needs, with bands and what has to fit: {@code transmit: 2m 70cm; power = 12 V}. */
public final class ItemFunctions implements Notation<List<ItemFunction>> {

    @Override
    public String print(List<ItemFunction> functions) {
        return FunctionText.print(functions);
    }

    @Override
    public List<ItemFunction> parse(String text) {
        return FunctionText.parse(text);
    }
}
