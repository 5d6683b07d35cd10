package org.straddle.kit.table;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.straddle.model.FunctionKind;
import org.straddle.model.ItemFunction;
import org.straddle.model.StraddleFactory;
import org.straddle.model.naming.Naming;
import org.straddle.words.Catalogue;

/** What an item gives or needs, with bands and what has to fit: {@code transmit: 2m 70cm; power = 12 V}. */
public final class FunctionText {

    private static final Catalogue TEXTS = Catalogue.of(FunctionText.class);

    private FunctionText() {
    }

    public static String print(List<ItemFunction> functions) {
        return functions.stream().map(FunctionText::print).collect(Collectors.joining("; "));
    }

    private static String print(ItemFunction function) {
        String fit = function.getFit() == null ? "" : function.getFit().strip();
        return Naming.of(function.getKind()) + (function.getBands().isEmpty() ? "" : ": " + String.join(" ", function.getBands()))
                + (fit.isEmpty() ? "" : " = " + fit);
    }

    /** @throws IllegalArgumentException says in a sentence what is wrong */
    public static List<ItemFunction> parse(String text) {
        List<ItemFunction> functions = new ArrayList<>();
        for (String part : text.split(";")) {
            if (!part.isBlank()) {
                functions.add(function(part.strip()));
            }
        }
        return functions;
    }

    private static ItemFunction function(String part) {
        int equals = part.indexOf('=');
        String before = equals < 0 ? part : part.substring(0, equals);
        int colon = before.indexOf(':');
        String kind = (colon < 0 ? before : before.substring(0, colon)).strip();
        ItemFunction function = StraddleFactory.eINSTANCE.createItemFunction();
        function.setKind(FunctionKind.VALUES.stream()
                .filter(each -> Naming.of(each).equalsIgnoreCase(kind) || each.getLiteral().equalsIgnoreCase(kind)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(TEXTS.text("functions.unknown", "kind", kind,
                        "kinds", FunctionKind.VALUES.stream().map(Naming::of).toList()))));
        if (colon >= 0) {
            Stream.of(before.substring(colon + 1).split("[\\s,]+")).filter(band -> !band.isEmpty())
                    .forEach(function.getBands()::add);
        }
        if (equals >= 0) {
            function.setFit(part.substring(equals + 1).strip());
        }
        return function;
    }
}
