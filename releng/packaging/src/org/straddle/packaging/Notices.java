package org.straddle.packaging;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * Name, version and licence of every library that is packed. Versions and coordinates come from the target definition,
 * licences from {@code licences.txt}; both are compared with what is packed, and what does not fit stops the packing.
 */
final class Notices {

    /** Licences with conditions on the product as a whole or on how it may be passed on, by a word of their names. */
    private static final List<String> BINDING = List.of("LGPL", "GPL", "EPL", "CDDL", "LicenseRef");

    /** What a licence looks like where a jar states it, by the first word of its SPDX name. */
    private static final Map<String, Pattern> STATED = Map.of(
            "Apache", Pattern.compile("(?i)apache"),
            "EPL", Pattern.compile("(?i)eclipse public license|epl[ -]?(v|2|1)"),
            "MIT", Pattern.compile("(?i)\\bMIT\\b|permission is hereby granted, free of charge"),
            "BSD", Pattern.compile("(?i)\\bBSD\\b|redistribution and use in source and binary forms"),
            "Unicode", Pattern.compile("(?i)unicode"),
            "LGPL", Pattern.compile("(?i)lesser general public|LGPL"),
            "CDDL", Pattern.compile("(?i)CDDL|common development and distribution"),
            "W3C", Pattern.compile("(?i)W3C"));

    private static final Pattern DEPENDENCY = Pattern.compile(
            "<groupId>([^<]+)</groupId><artifactId>([^<]+)</artifactId><version>([^<]+)</version>");
    private static final Pattern LABEL = Pattern.compile("label=\"([^\"]+)\"");

    private record Line(Pattern name, String licence, String where) {
    }

    private record Library(String name, String version, String coordinates, Line licence) {
    }

    private record Artifact(String group, String artifact, String version, String label) {
    }

    private final List<Line> lines = new ArrayList<>();
    private final List<Artifact> target = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();

    Notices(Path licences, Path targetDefinition) throws IOException {
        for (String line : Files.readAllLines(licences)) {
            if (!line.isBlank() && !line.startsWith("#")) {
                String[] columns = line.strip().split("\\s{2,}");
                lines.add(new Line(Pattern.compile(columns[0].replace(".", "\\.").replace("*", ".*")), columns[1],
                        columns.length > 2 ? columns[2] : ""));
            }
        }
        String label = "";
        for (String line : Files.readAllLines(targetDefinition)) {
            Matcher labelled = LABEL.matcher(line);
            if (labelled.find()) {
                label = labelled.group(1);
            }
            Matcher dependency = DEPENDENCY.matcher(line);
            if (dependency.find()) {
                target.add(new Artifact(dependency.group(1), dependency.group(2), dependency.group(3), label));
            }
        }
    }

    /** @throws IllegalStateException when a library has no licence here, another version or says something else itself */
    String of(Path plugins) throws IOException {
        List<Library> libraries = new ArrayList<>();
        Map<String, List<Library>> inside = new TreeMap<>();
        for (Plugin plugin : Plugin.in(plugins)) {
            if (plugin.isOurs()) {
                continue;
            }
            Optional<Line> line = licence(plugin.name());
            Optional<Artifact> artifact = artifact(plugin);
            if (line.isEmpty()) {
                faults.add(plugin.name() + ": no line in licences.txt");
            }
            if (artifact.isEmpty()) {
                faults.add(plugin.name() + " " + plugin.version() + ": not pinned in the target definition");
            }
            if (line.isEmpty() || artifact.isEmpty()) {
                continue;
            }
            if (plugin.isJar()) {
                compare(plugin, line.get());
                List<Library> shaded = inside(plugin, artifact.get());
                if (!shaded.isEmpty()) {
                    inside.put(plugin.name(), shaded);
                }
            }
            Artifact found = artifact.get();
            libraries.add(new Library(plugin.name(), found.version(), found.group() + ":" + found.artifact(), line.get()));
        }
        if (!faults.isEmpty()) {
            throw new IllegalStateException("The notices do not fit what is packed:\n" + String.join("\n", faults));
        }
        return text(libraries, inside);
    }

    private Optional<Line> licence(String name) {
        return lines.stream().filter(line -> line.name().matcher(name).matches()).findFirst();
    }

    private Optional<Artifact> artifact(Plugin plugin) {
        String version = plugin.version();
        return target.stream()
                .filter(each -> plugin.name().equals(each.label()) || plugin.name().equals(each.artifact()) || plugin.name().equals(each.group())
                        || (plugin.name() + "-").replace('.', '-').contains(each.artifact().replace('.', '-') + "-"))
                .filter(each -> plugin.name().equals(each.label()) || version.startsWith(each.version().replaceAll("[^0-9.].*", ""))
                        || version.startsWith(each.version()))
                .max(java.util.Comparator.comparing((Artifact each) -> plugin.name().equals(each.label()))
                        .thenComparing(each -> ("." + plugin.name()).endsWith("." + each.artifact()))
                        .thenComparing(each -> each.artifact().length()));
    }

    /** What the jar itself says must name the licence; silence is allowed where the table says where it is stated. */
    private void compare(Plugin plugin, Line line) throws IOException {
        String said = said(plugin);
        if (said.isBlank()) {
            if (line.where().isEmpty()) {
                faults.add(plugin.name() + ": the jar states no licence, and licences.txt does not say where it is stated");
            }
            return;
        }
        if (!fits(line.licence(), said) && line.where().isEmpty()) {
            faults.add(plugin.name() + ": the jar does not state " + line.licence());
        }
    }

    private static boolean fits(String licence, String said) {
        for (String choice : licence.split(" OR ")) {
            Pattern stated = STATED.get(choice.split("[- ]")[0]);
            if (stated != null && stated.matcher(said).find()) {
                return true;
            }
        }
        return false;
    }

    private static String said(Plugin plugin) throws IOException {
        StringBuilder said = new StringBuilder(plugin.header("Bundle-License"));
        try (ZipFile zip = new ZipFile(plugin.path().toFile())) {
            for (ZipEntry entry : (Iterable<ZipEntry>) zip.stream().<ZipEntry>map(each -> each)::iterator) {
                if (entry.getName().matches("(META-INF/)?(?i)(licen[cs]e[^/]*|about\\.html)")) {
                    said.append('\n').append(read(zip, entry));
                } else if (entry.getName().matches("META-INF/maven/.*/pom\\.xml")) {
                    said.append('\n').append(licencesOfPom(read(zip, entry)));
                }
            }
        }
        return said.toString();
    }

    private static String licencesOfPom(String pom) {
        int from = pom.indexOf("<licenses>");
        int to = pom.indexOf("</licenses>");
        return from < 0 || to < from ? "" : pom.substring(from, to);
    }

    private static String read(ZipFile zip, ZipEntry entry) throws IOException {
        try (InputStream in = zip.getInputStream(entry)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Libraries that a jar was made of, by the descriptions that Maven left in it. */
    private List<Library> inside(Plugin plugin, Artifact itself) throws IOException {
        List<Library> libraries = new ArrayList<>();
        try (ZipFile zip = new ZipFile(plugin.path().toFile())) {
            for (ZipEntry entry : (Iterable<ZipEntry>) zip.stream().<ZipEntry>map(each -> each)::iterator) {
                if (!entry.getName().matches("META-INF/maven/.*/pom\\.properties")) {
                    continue;
                }
                Properties properties = new Properties();
                try (InputStream in = zip.getInputStream(entry)) {
                    properties.load(in);
                }
                String group = properties.getProperty("groupId");
                String artifact = properties.getProperty("artifactId");
                if (artifact.equals(itself.artifact()) || plugin.name().startsWith("com.ibm.icu")) {
                    continue;
                }
                Optional<Line> line = licence(group + ":" + artifact);
                if (line.isEmpty()) {
                    faults.add(plugin.name() + " holds " + group + ":" + artifact + ": no line in licences.txt");
                } else {
                    libraries.add(new Library(artifact, properties.getProperty("version"), group + ":" + artifact, line.get()));
                }
            }
        }
        libraries.sort(java.util.Comparator.comparing(Library::coordinates));
        return libraries;
    }

    private static String text(List<Library> libraries, Map<String, List<Library>> inside) {
        StringBuilder text = new StringBuilder();
        text.append("What Straddle is packed with: name, version, licence, and where it comes from on Maven Central.\n")
                .append("Licences are named as in the SPDX licence list. Their texts lie in the folder \"licenses\" or in the\n")
                .append("files themselves, under \"plugins\".\n\n");
        libraries.forEach(library -> append(text, "", library));
        inside.forEach((holder, all) -> {
            text.append("\nInside ").append(holder).append(":\n");
            all.forEach(library -> append(text, "  ", library));
        });
        text.append("\nInside geotools, without a description of their own: Java Advanced Imaging (javax.media.jai,\n")
                .append("com.sun.media), jj2000 (JPEG 2000), HSQLDB (BSD-3-Clause), EJML (Apache-2.0), RE2/J (BSD-3-Clause),\n")
                .append("Checker Framework annotations (MIT).\n")
                .append("\nInside the solver's native libraries: OR-Tools, Abseil (Apache-2.0), Protocol Buffers, RE2 (BSD-3-Clause),\n")
                .append("SCIP (Apache-2.0), HiGHS (MIT), CBC, CLP, CGL, CoinUtils, OSI (EPL-2.0), zlib (Zlib), bzip2 (bzip2-1.0.6).\n");
        TreeSet<String> binding = new TreeSet<>();
        libraries.forEach(library -> binds(library, binding));
        inside.values().forEach(all -> all.forEach(library -> binds(library, binding)));
        text.append("\nLicences with conditions on how Straddle may be passed on:\n");
        binding.forEach(licence -> text.append("  ").append(licence).append('\n'));
        text.append("  LicenseRef of Java Advanced Imaging and of jj2000, inside geotools\n");
        return text.toString();
    }

    private static void binds(Library library, TreeSet<String> binding) {
        String licence = library.licence().licence();
        // Where there is a choice, one that does not bind settles it.
        boolean free = List.of(licence.split(" OR ")).stream()
                .anyMatch(choice -> BINDING.stream().noneMatch(choice::contains));
        if (!free) {
            binding.add(licence);
        }
    }

    private static void append(StringBuilder text, String indent, Library library) {
        text.append(indent).append(library.name()).append(' ').append(library.version()).append("  ")
                .append(library.licence().licence()).append("  ").append(library.coordinates());
        if (library.licence().where().equals("memory")) {
            text.append("  (not stated in the file; to be confirmed)");
        }
        text.append('\n');
    }
}
