package org.straddle.architecture;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A place in a template where a text is asked for: {@code text("key", "name", value, …)}.
 *
 * @param where     the file
 * @param arguments their names
 */
record TemplateCall(String where, String key, Set<String> arguments) {

    private static final Pattern CALL = Pattern.compile("\\btext\\(\\s*\"([^\"]+)\"");
    private static final Pattern ARGUMENT = Pattern.compile(", \"(\\w+)\", ");

    /** Directives and values, which are not said as they stand. */
    private static final Pattern DIRECTIVE = Pattern.compile("(?s)<#--.*?-->|</?[#@](?:[^>\"]|\"[^\"]*\")*>|\\$\\{[^}]*\\}");
    private static final Pattern MARKUP = Pattern.compile("(?s)<style>.*?</style>|<[^>]*>");
    /** The ending of a file's name is none. */
    private static final Pattern WORD = Pattern.compile("(?<![.\\p{L}])\\p{L}{2,}");

    static List<TemplateCall> in(String bundle) {
        List<TemplateCall> calls = new ArrayList<>();
        for (Path file : templates(bundle)) {
            String text = SourceTree.text(file);
            Matcher call = CALL.matcher(text);
            while (call.find()) {
                Set<String> names = new TreeSet<>();
                Matcher name = ARGUMENT.matcher(text.substring(call.end(), closing(text, call.end())));
                while (name.find()) {
                    names.add(name.group(1));
                }
                calls.add(new TemplateCall(file.getFileName().toString(), call.group(1), names));
            }
        }
        return calls;
    }

    /** Words that stand in a template instead of a catalogue. */
    static List<String> words(String bundle) {
        List<String> found = new ArrayList<>();
        for (Path file : templates(bundle)) {
            Matcher word = WORD.matcher(said(SourceTree.text(file)));
            while (word.find()) {
                found.add(file.getFileName() + ": " + word.group());
            }
        }
        return found;
    }

    private static String said(String template) {
        String filled = DIRECTIVE.matcher(template.replace("->", "")).replaceAll("");
        return MARKUP.matcher(filled).replaceAll("\n");
    }

    private static int closing(String text, int from) {
        int open = 1;
        int at = from;
        while (open > 0 && at < text.length()) {
            open += text.charAt(at) == '(' ? 1 : text.charAt(at) == ')' ? -1 : 0;
            at++;
        }
        return at;
    }

    private static List<Path> templates(String bundle) {
        Path source = SourceTree.root().resolve("bundles/org.straddle." + bundle + "/src");
        List<Path> files = new ArrayList<>(SourceTree.files(source, ".ftl"));
        files.addAll(SourceTree.files(source, ".ftlh"));
        return files;
    }
}
