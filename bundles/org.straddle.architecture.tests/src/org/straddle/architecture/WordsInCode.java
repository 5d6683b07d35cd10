package org.straddle.architecture;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

import com.github.javaparser.ast.Node;
import com.github.javaparser.ast.expr.AnnotationExpr;
import com.github.javaparser.ast.expr.LiteralStringValueExpr;
import com.github.javaparser.ast.expr.MethodCallExpr;
import com.github.javaparser.ast.expr.ObjectCreationExpr;
import com.github.javaparser.ast.expr.StringLiteralExpr;
import com.github.javaparser.ast.expr.TextBlockLiteralExpr;

/**
 * Finds texts that stand in the code instead of a catalogue: literals with words and blanks, and forms for figures. Spared
 * is what no user reads: what a developer did wrong (in a runtime exception, beginning with a small letter), expressions
 * to match, and notations of dates.
 */
final class WordsInCode {

    private static final Pattern WORDS = Pattern.compile("(?s).*(?:\\p{L}{2,}[,;:.]? |\\s\\p{L}{2,}).*");

    /** What a developer did wrong begins small and is no sentence. */
    private static final Pattern FOR_DEVELOPERS = Pattern.compile("(?s)(?![A-Z][a-z])(?!.*\\p{L}[.!?](?: |$)).*");

    /** A name with its number: {@code NMEA 0183}. */
    private static final Pattern NAME = Pattern.compile("\\p{L}+ [0-9.]+");

    /** The beginning of an element with an attribute, whose value follows. */
    private static final Pattern MARKUP = Pattern.compile("<\\w+ \\w+=\\\\\"");

    private static final Set<String> MISUSE = Set.of("IllegalArgumentException", "IllegalStateException", "AssertionError",
            "UnsupportedOperationException", "NullPointerException", "NoSuchElementException", "IndexOutOfBoundsException");

    private static final Set<String> NOTATIONS = Set.of("compile", "ofPattern", "matches", "split", "replaceAll", "replaceFirst",
            "requireNonNull");

    private WordsInCode() {
    }

    /** File, line and text of what should be in a catalogue. */
    static List<String> in(Path file) {
        List<String> found = new ArrayList<>();
        look(JavaSource.of(file), file, found);
        return found;
    }

    /** One walk for all that is looked for: the trees are many and large. */
    private static void look(Node node, Path file, List<String> found) {
        if ((node instanceof StringLiteralExpr || node instanceof TextBlockLiteralExpr) && hasWords((LiteralStringValueExpr) node)) {
            found.add(where(file, node) + node);
        } else if (node instanceof MethodCallExpr call && formats(call)) {
            found.add(where(file, call) + call.getNameAsString());
        }
        for (Node part : node.getChildNodes()) {
            look(part, file, found);
        }
    }

    private static boolean hasWords(LiteralStringValueExpr literal) {
        return WORDS.matcher(literal.getValue().replace("\\n", "\n")).matches() && !NAME.matcher(literal.getValue()).matches()
                && !MARKUP.matcher(literal.getValue()).matches() && !isSpared(literal);
    }

    private static boolean formats(MethodCallExpr call) {
        String name = call.getNameAsString();
        return name.equals("formatted") || name.equals("printf")
                || name.equals("format") && call.getScope().filter(scope -> scope.toString().equals("String")).isPresent();
    }

    private static boolean isSpared(LiteralStringValueExpr literal) {
        for (Node node = literal.getParentNode().orElse(null); node != null; node = node.getParentNode().orElse(null)) {
            if (node instanceof MethodCallExpr call && NOTATIONS.contains(call.getNameAsString())
                    || node instanceof AnnotationExpr annotation && annotation.getNameAsString().equals("SuppressWarnings")) {
                return true;
            }
            if (node instanceof ObjectCreationExpr made && MISUSE.contains(made.getTypeAsString())) {
                return FOR_DEVELOPERS.matcher(literal.getValue()).matches();
            }
        }
        return false;
    }

    private static String where(Path file, Node node) {
        return file.getFileName() + ":" + node.getBegin().map(position -> position.line).orElse(0) + " ";
    }
}
