package org.straddle.architecture;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import com.github.javaparser.JavaParser;
import com.github.javaparser.ParserConfiguration;
import com.github.javaparser.ast.CompilationUnit;

/** Source files as syntax trees, parsed once. */
final class JavaSource {

    private static final Map<Path, CompilationUnit> PARSED = new ConcurrentHashMap<>();

    private JavaSource() {
    }

    static CompilationUnit of(Path file) {
        return PARSED.computeIfAbsent(file, JavaSource::parse);
    }

    private static CompilationUnit parse(Path file) {
        ParserConfiguration plain = new ParserConfiguration()
                .setLanguageLevel(ParserConfiguration.LanguageLevel.JAVA_17).setAttributeComments(false);
        // Whether a file keeps to its level of the language was for the compiler to say.
        plain.getProcessors().clear();
        JavaParser parser = new JavaParser(plain);
        return parser.parse(SourceTree.text(file)).getResult()
                .orElseThrow(() -> new IllegalStateException("cannot parse " + file));
    }
}
