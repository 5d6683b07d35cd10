package org.straddle.architecture;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The enums of the model, read from its text; their Java code is generated and may not be there yet. */
final class ModelEnums {

    private static final Pattern ENUM = Pattern.compile("(?s)\\benum (\\w+) \\{(.*?)\\}");
    private static final Pattern CONSTANT = Pattern.compile("(\\w+) as \"");

    private ModelEnums() {
    }

    static Map<String, Set<String>> constants() {
        Map<String, Set<String>> all = new HashMap<>();
        Matcher type = ENUM.matcher(SourceTree.text(SourceTree.root()
                .resolve("bundles/org.straddle.model/model/straddle.xcore")));
        while (type.find()) {
            Set<String> names = new TreeSet<>();
            Matcher constant = CONSTANT.matcher(type.group(2));
            while (constant.find()) {
                names.add(constant.group(1).replaceAll("(?<=[a-z])(?=[A-Z])", "_").toUpperCase(Locale.ROOT));
            }
            all.put(type.group(1), names);
        }
        return all;
    }
}
