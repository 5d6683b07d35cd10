package org.straddle.architecture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Manifest;
import java.util.stream.Stream;

/** The bundles as they lie in the source tree, read without building them. */
final class SourceTree {

    /** Tests run in the folder of a bundle. */
    private static final Path BUNDLES = Path.of("").toAbsolutePath().getParent();

    private SourceTree() {
    }

    static Path root() {
        return BUNDLES.getParent();
    }

    /** Short names of all bundles that ship, such as {@code sky} or {@code ui.daysheet}. */
    static List<String> shipped() {
        return all().stream().filter(name -> !name.endsWith(".tests")).toList();
    }

    /** The same with their tests, such as {@code sky.tests}. */
    static List<String> all() {
        try (Stream<Path> folders = Files.list(BUNDLES)) {
            return folders.map(folder -> folder.getFileName().toString()).filter(name -> name.startsWith("org.straddle."))
                    .map(name -> name.substring("org.straddle.".length())).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a bundle's manifest requires, symbolic names without directives. */
    static List<String> requirements(String bundle) {
        return names(bundle, "Require-Bundle");
    }

    /** The packages that a bundle's manifest shows to others. */
    static List<String> exports(String bundle) {
        return names(bundle, "Export-Package");
    }

    private static List<String> names(String bundle, String headerName) {
        Path file = BUNDLES.resolve("org.straddle." + bundle).resolve("META-INF/MANIFEST.MF");
        try (InputStream in = Files.newInputStream(file)) {
            String header = new Manifest(in).getMainAttributes().getValue(headerName);
            List<String> names = new ArrayList<>();
            if (header != null) {
                // Commas inside quoted version ranges do not part the names.
                for (String clause : header.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")) {
                    names.add(clause.split(";")[0].strip());
                }
            }
            return names;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Hand-written Java files of a bundle. */
    static List<Path> sources(String bundle) {
        return files(BUNDLES.resolve("org.straddle." + bundle).resolve("src"), ".java");
    }

    static List<Path> files(Path folder, String ending) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> found = Files.walk(folder)) {
            return found.filter(file -> file.toString().endsWith(ending) && Files.isRegularFile(file)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
