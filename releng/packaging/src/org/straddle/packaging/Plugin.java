package org.straddle.packaging;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import java.util.stream.Stream;

/** A bundle or fragment as it lies in the product's folder of plug-ins: a jar, or a folder. */
record Plugin(Path path, String name, String version, Manifest manifest) {

    static List<Plugin> in(Path folder) throws IOException {
        List<Plugin> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : (Iterable<Path>) files.sorted()::iterator) {
                Manifest manifest = manifest(file);
                Attributes main = manifest.getMainAttributes();
                all.add(new Plugin(file, main.getValue("Bundle-SymbolicName").split(";")[0].strip(),
                        main.getValue("Bundle-Version"), manifest));
            }
        }
        return all;
    }

    private static Manifest manifest(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            try (InputStream in = Files.newInputStream(file.resolve("META-INF/MANIFEST.MF"))) {
                return new Manifest(in);
            }
        }
        try (JarFile jar = new JarFile(file.toFile(), false)) {
            return jar.getManifest();
        }
    }

    boolean isJar() {
        return !Files.isDirectory(path);
    }

    boolean isOurs() {
        return name.startsWith("org.straddle.");
    }

    String fileName() {
        return path.getFileName().toString();
    }

    String header(String header) {
        String value = manifest.getMainAttributes().getValue(header);
        return value == null ? "" : value;
    }

    boolean isFragment() {
        return !header("Fragment-Host").isEmpty();
    }

    /** First words of the clauses of a header: names of bundles or packages. */
    List<String> names(String header) {
        List<String> names = new ArrayList<>();
        for (String clause : clauses(header(header))) {
            String[] parts = clause.split(";");
            for (String part : parts) {
                // Several packages may share attributes: a;b;version="1".
                if (!part.contains("=")) {
                    names.add(part.strip());
                }
            }
        }
        return names;
    }

    /** The parts between commas that stand outside quotes. */
    static List<String> clauses(String header) {
        List<String> clauses = new ArrayList<>();
        StringBuilder clause = new StringBuilder();
        boolean quoted = false;
        for (char c : header.toCharArray()) {
            quoted ^= c == '"';
            if (c == ',' && !quoted) {
                clauses.add(clause.toString().strip());
                clause.setLength(0);
            } else {
                clause.append(c);
            }
        }
        if (!clause.toString().isBlank()) {
            clauses.add(clause.toString().strip());
        }
        return clauses;
    }
}
